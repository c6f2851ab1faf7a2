"""The teaching notes say what a teacher with 25 children needs, made from the lesson."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from generator.compute.result import LessonResult
from generator.making import make_lesson
from generator.present.languages import folder_of
from generator.present.stops.kinds import KINDS
from generator.steps.surroundings import surroundings
from tests.html_page import having, read_html, text
from tests.project import GOOD, ROOT, library, worked
from tests.site_data.test_lessons import RESULTS
from tests.worked import worked as worked_stops

DEMO = sorted(RESULTS)


def pages(result: LessonResult, language: str = "en") -> dict[str, Element]:
    """The pages of a lesson by name, as a preview has them."""
    made = make_lesson({language: result}, surroundings(ROOT, library(), preview=True))
    start = f"{folder_of(language, library().site)}{result.lesson.id}/"
    return {
        one.path.removeprefix(start): read_html(one.content.decode())
        for one in made
        if one.path.endswith(".html")
    }


@pytest.fixture(scope="module", params=["en", "es"])
def good(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Element:
    """The notes of the good lesson in a language of the site; its own texts stay English."""
    return pages(worked(tmp_path_factory.mktemp("good"), GOOD), request.param)["notes.html"]


def sections(page: Element) -> set[str]:
    return {one.get("aria-labelledby", "") for one in page.iter("section")}


def minutes(page: Element) -> Iterator[int]:
    for row in next(page.iter("tbody")).iter("tr"):
        yield int(text(list(row)[-1]))


@pytest.mark.parametrize("lesson", DEMO)
def test_the_minutes_of_the_stops_are_those_of_the_lesson(lesson: str) -> None:
    """texts.md 2.4: the plan showed times of the video only."""
    result = RESULTS[lesson]
    notes = pages(result)["notes.html"]
    told = list(minutes(notes))
    parting = int(result.lesson.file.parting is not None)  # it takes time as well
    assert len(told) == len(result.lesson.file.stops) + parting
    assert sum(told) == result.lesson.file.minutes
    assert text(next(notes.iter("tfoot"))) == f"All together{result.lesson.file.minutes}"


def test_the_plan_lets_a_number_be_worked_out_and_a_guess_be_said() -> None:
    """texts.md 2.4: a calculation was planned as a guess."""
    plan = text(next(pages(RESULTS["soup-night"])["notes.html"].iter("tbody")))
    number, choice = "works it out and says how", "chooses one and says why"
    assert (plan.count(number), plan.count(choice)) == (2, 1), plan
    drinks = text(next(pages(RESULTS["market-drinks"])["notes.html"].iter("tbody")))
    assert (drinks.count("says what they think"), drinks.count(choice)) == (1, 1), drinks


def test_every_kind_has_a_time_of_its_own_kind() -> None:
    """Watching is all film; talk is no working out: through each kind's record."""
    assert {kind.name: kind.doing.value for kind in KINDS if kind.name != "quiz"} == {
        "ask": "work_out",
        "compare": "work_out",
        "day": "work_out",
        "move": "move",
        "talk": "talk",
        "watch": "watch",
        "what_if": "work_out",
    }


def test_all_that_a_class_needs_has_its_section(good: Element) -> None:
    """texts.md 2.4, in both languages."""
    asked = {"plan", "class", "answers", "questions", "talk", "count", "adapt", "upset", "care"}
    assert asked | {"next", "sources"} <= sections(good)


def test_whose_standards_are_not_here_is_said() -> None:
    """texts.md 2.4: no standard of physical or health education stood in the notes."""
    assert "add your own state's standards" in text(pages(RESULTS["river-walk"])["notes.html"])


def test_materials_are_reckoned_from_the_lesson(tmp_path: Path) -> None:
    """Two cards fit one sheet, 12 groups; 170 and 90, 290 and 110: by hand from the shown values."""
    result = worked(tmp_path, GOOD)
    notes = text(pages(result)["notes.html"])
    assert "Make 12 groups: 11 pairs and one group of three." in notes
    assert "Print the 2 movement cards once for each group, 12 sheets in all." in notes
    found = re.search(r"for one group: (\d+) hundreds, (\d+) tens, (\d+) ones", notes)
    assert found
    hundreds, tens, ones = map(int, found.groups())
    for row in result.comparisons["breakfast"].rows:
        assert hundreds * 100 + tens * 10 + ones >= row.gap.first + row.gap.second
    first, second = map(int, re.findall(r"In two halves: (\d+) .* and (\d+) on", notes)[0])
    assert first + second == 10


def test_questions_frames_and_words_fit_what_is_worked_out(tmp_path: Path) -> None:
    """texts.md 2.2-5, 2.2-9, 2.4."""
    notes = text(pages(worked(tmp_path, GOOD))["notes.html"])
    for said in (
        "How did you find the gap? Show a second way.",
        "___ holds ___ more than ___.",
        "gap (difference)",
        "left over (remainder)",
        "sum",
    ):
        assert said in notes
    talk = pages(worked_stops("- talk: {prompt: What next?}\n"))["notes.html"]
    assert "questions" not in sections(talk)
    assert "count" not in sections(talk)
    assert "In two halves" not in text(talk)


def test_when_numbers_upset_somebody_there_are_three_ways(tmp_path: Path) -> None:
    notes = pages(worked(tmp_path, GOOD))["notes.html"]
    [upset] = [one for one in notes.iter("section") if one.get("aria-labelledby") == "upset"]
    for said in ("Blocks only", "another lesson", "the school's health staff", "A line for home:"):
        assert said in text(upset)


def test_nothing_that_the_lesson_page_has_is_said_twice(tmp_path: Path) -> None:
    """texts.md 3.4: care and sources stood on both."""
    made = pages(worked(tmp_path, GOOD))
    notes, page = made["notes.html"], made["index.html"]
    [sources] = [one for one in notes.iter("section") if one.get("aria-labelledby") == "sources"]
    links = [link.get("href") for link in sources.iter("a")]
    assert links == ["index.html#breakfast"]
    assert not list(having(sources, "sources"))
    assert list(having(page, "sources"))
    assert "This lesson is for learning." in text(page)
    assert "This lesson is for learning." not in text(notes)
    assert "can choke" in text(notes)


def test_where_a_day_comes_from_stands_in_the_notes_alone() -> None:
    """Its page leads there."""
    made = pages(RESULTS["two-days"])
    [sources] = [
        one for one in made["notes.html"].iter("section") if one.get("aria-labelledby") == "sources"
    ]
    ids = {heading.get("id") for heading in sources.iter("h3")}
    led = {(link.get("href") or "").partition("#")[2] for link in made["index.html"].iter("a")}
    assert {"from-rainy-day", "from-long-path"} == ids
    assert ids <= led


def test_other_lessons_are_found_from_the_notes(tmp_path: Path) -> None:
    notes = pages(worked(tmp_path, GOOD))["notes.html"]
    [after] = [one for one in notes.iter("section") if one.get("aria-labelledby") == "next"]
    assert [link.get("href") for link in after.iter("a")] == ["../index.html"]
    assert "Smaller numbers first." in text(after)


@pytest.mark.parametrize("lesson", DEMO)
def test_every_stop_with_something_to_find_has_its_answer(lesson: str) -> None:
    """texts.md 2.4: asks and days were in the answer key alone."""
    made = pages(RESULTS[lesson])
    answers = next(
        one for one in made["notes.html"].iter("section") if one.get("aria-labelledby") == "answers"
    )
    told = text(answers)
    for stop in having(made["index.html"], "stop"):
        kind = next(name for name in (stop.get("class") or "").split() if "stop-" in name)
        if kind in {"stop-ask", "stop-day"}:
            heading = text(next(stop.iter("h2")))
            assert heading in told, heading
        asked_again = any("data-before" in form.attrib for form in stop.iter("form"))
        if kind == "stop-ask" and not asked_again:  # its answer stands further on
            reveal = next(one for one in stop.iter("details") if one.get("data-reveal") is not None)
            assert text(list(reveal)[-1]) in told


def test_wrong_answers_of_gaps_counts_and_sums_say_what_to_say_next() -> None:
    """texts.md 2.4: of counts and totals nothing was said; the sentence is the page's own."""
    answers = pages(RESULTS["river-walk"])["notes.html"]
    told = {text(one) for one in answers.iter("dd")}
    terms = {text(one) for one in answers.iter("dt")}
    assert {"0", "count 5", "count 4.5", "count 3", "sum 410"} <= terms
    for said in (
        "Not yet. Taking away 0 changes nothing. What is 45 when nothing is taken away?",
        "Not yet. What is left over is less than 10. Count only the whole steps.",
        "Not yet. Start with the ones. Ten of them make a ten: where do you put it?",
    ):
        assert any(one.endswith(f"Say next: {said}") for one in told), said
    days = pages(RESULTS["two-days"])["notes.html"]
    assert any(text(one).startswith("sum ") for one in days.iter("dt"))


@pytest.mark.parametrize("lesson", DEMO)
def test_a_family_reads_what_the_minutes_are_for(lesson: str) -> None:
    """texts.md 2.5: the minutes of a lesson are true with the moving alone."""
    result = RESULTS[lesson]
    shown = text(pages(result)["index.html"])
    total = result.lesson.file.minutes
    found = re.search(
        r"In minutes: (\d+) to watch, (\d+) to work out, (\d+) to move and (\d+) to talk",
        shown,
    )
    assert found
    assert sum(map(int, found.groups())) == total


def test_smaller_and_larger_numbers_are_those_of_the_lesson() -> None:
    """texts.md 2.2-6: they were the same two sentences for every lesson."""
    told = {
        name: text(pages(result)["notes.html"])
        for name, result in RESULTS.items()
        if result.comparisons
    }
    assert len(told) > 2
    for name, result in RESULTS.items():
        found = re.findall(r"take row (\d) alone. Build ([\d,]+) and ([\d,]+) with", told[name])
        for comparison, (row, *numbers) in zip(result.comparisons.values(), found, strict=True):
            gap = comparison.rows[int(row) - 1].gap
            assert gap.size
            assert [int(number.replace(",", "")) for number in numbers] == [
                gap.larger,
                gap.smaller,
            ]
    assert "so that the gap is exactly 15\N{NO-BREAK SPACE}g." in told["bean-stew"].replace(
        "15 g", "15\N{NO-BREAK SPACE}g"
    )


def test_sentences_to_begin_with_are_on_the_worksheet_and_help_beside_a_child_on_the_key() -> None:
    """texts.md 2.2-9 and 2.2-10."""
    made = pages(RESULTS["river-walk"])
    frame, beside = "I started at ___ and counted up to ___.", "open the hint together"
    assert frame in text(made["worksheet.html"])
    assert frame not in text(made["answers.html"])
    assert beside in text(made["answers.html"])
    assert beside not in text(made["worksheet.html"])
