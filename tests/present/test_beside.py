"""The opening of a lesson speaks to the adult beside the child, and says each thing once."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from generator.model.stops import STOP_KINDS
from tests.html_page import having, text
from tests.present.test_notes import pages
from tests.project import GOOD, ROOT, library, worked
from tests.site_data.test_lessons import RESULTS

DEMO = sorted(RESULTS)
LANGUAGES = sorted(library().words)


@cache
def made(lesson: str, language: str) -> dict[str, Element]:
    return pages(RESULTS[lesson], language)


def page_of(lesson: str, language: str = "en") -> Element:
    return made(lesson, language)["index.html"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("lesson", DEMO)
def test_a_line_under_the_summary_is_for_the_adult(lesson: str, language: str) -> None:
    """texts.md 2.5: nothing told the adult what they do."""
    page = page_of(lesson, language)
    (opening,) = having(page, "opening", "div")
    below = list(opening)
    at = next(at for at, one in enumerate(below) if one.get("class") == "summary")
    assert text(below[at + 1]) == library().words[language].texts["beside"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("lesson", DEMO)
def test_the_adult_finds_a_line_for_each_kind_of_stop_folded(lesson: str, language: str) -> None:
    """texts.md 2.2-10: a prompt for the adult, one line a stop."""
    page, words = page_of(lesson, language), library().words[language].texts
    (box,) = having(page, "beside", "details")
    assert box.get("open") is None
    kinds = list(dict.fromkeys(stop.kind for stop in RESULTS[lesson].lesson.file.stops))
    assert [text(one) for one in box.iter("li")] == [words[f"beside_{kind}"] for kind in kinds]


@pytest.mark.parametrize("film", [True, False])
def test_where_no_stop_shows_the_film_it_stands_in_the_opening(tmp_path: Path, film: bool) -> None:
    watch = '  - watch: {from: "0:00", to: "0:20"}\n    say: Hello from Larkmead.\n'
    assert watch in GOOD
    page = pages(worked(tmp_path, GOOD if film else GOOD.replace(watch, "")))["index.html"]
    (opening,) = having(page, "opening", "div")
    (box,) = having(page, "beside", "details")
    assert (box in list(opening)) is not film


def test_every_kind_has_a_line_of_its_own_in_every_language() -> None:
    for language in LANGUAGES:
        words = library().words[language].texts
        assert len({words[f"beside_{kind}"] for kind in STOP_KINDS}) == len(STOP_KINDS)
    english = library().words["en"].texts["beside_compare"]
    assert isinstance(english, str)
    assert "farther along the line" in english
    assert "open the hint together" in english


@pytest.mark.parametrize("lesson", DEMO)
def test_the_minutes_in_all_are_said_once(lesson: str) -> None:
    """texts.md 2.5."""
    minutes = RESULTS[lesson].lesson.file.minutes
    assert len(re.findall(rf"\b{minutes} minutes", text(page_of(lesson)))) == 1


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("lesson", DEMO)
def test_what_a_gap_is_stands_once_at_the_first_comparison(lesson: str, language: str) -> None:
    """texts.md 2.5: a gap is what school calls a difference; both words once a lesson."""
    page, says = page_of(lesson, language), library().words[language].texts["gap_is"]
    compares = list(having(page, "stop-compare", "section"))
    assert compares
    assert [sum(text(one) == says for one in each.iter("p")) for each in compares] == [
        1,
        *(0 for _ in compares[1:]),
    ]
    assert text(page).count(str(says)) == 1


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_line_of_a_gap_says_the_word_of_school(language: str) -> None:
    word = {"en": "difference", "es": "diferencia"}[language]
    assert word in str(library().words[language].texts["gap_is"]).lower()


@pytest.mark.parametrize("lesson", DEMO)
def test_a_place_is_promised_once_and_only_by_the_script(lesson: str) -> None:
    """texts.md 2.5: where nothing is kept, nothing is promised."""
    (line,) = [one for one in page_of(lesson).iter() if "data-place-kept" in one.attrib]
    assert line.get("hidden") is not None
    assert text(line) == library().words["en"].texts["place_kept"]


@pytest.mark.parametrize("lesson", DEMO)
def test_a_sheet_of_paper_serves_where_there_is_no_printer(lesson: str) -> None:
    """texts.md 2.5: said above the buttons."""
    endings = having(page_of(lesson), "ending", "section")
    (ending,) = [one for one in endings if "Any sheet of paper will do" in text(one)]
    says = next(at for at, one in enumerate(ending) if "Any sheet of paper will do" in text(one))
    assert says < next(at for at, one in enumerate(ending) if one.tag == "ul")
    assert "copy the two numbers" in text(ending[says])


def test_a_phone_is_told_how_to_take_a_lesson_home() -> None:
    """texts.md 2.5: a file to unpack is for a computer."""
    for words in library().words.values():
        says = str(words.texts["take_home_says"])
        assert re.match("On a computer:|En una computadora:", says)
        assert str(words.texts["keep"]) in says


@pytest.mark.parametrize("lesson", DEMO)
def test_the_notes_lead_to_what_the_lesson_says_already(lesson: str) -> None:
    """texts.md 3.4: care lines and sources stood twice."""
    page, notes = page_of(lesson), made(lesson, "en")["notes.html"]
    told = text(notes)
    for key in ("educational", "ask", "numbers", "food", "local"):
        says = str(library().words["en"].texts[f"care_{key}"])
        assert says in text(page)
        assert says not in told
    leads = {one.get("href", "").partition("#")[2] for one in notes.iter("a")}
    for section in having(page, "stop-compare", "section"):
        assert section.get("id") in leads
        assert f"from-{section.get('id')}" not in {one.get("id") for one in notes.iter()}


def test_the_guide_reminds_of_the_address_before_anything_is_printed() -> None:
    """texts.md 2.5: a worksheet prints the address of the site."""
    guide = (ROOT / "lessons/guide/publishing.md").read_text("utf-8")
    assert "`address:` in `site_data/site.yaml`" in guide
