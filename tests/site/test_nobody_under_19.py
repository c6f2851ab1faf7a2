"""No file of the built demo says what somebody under 19 needs: no page, no sheet, no notes, no data file."""

from __future__ import annotations

import re
from html import unescape
from pathlib import Path

import pytest

from generator.present.words.say import Say
from tests.compute.test_energy_needs import COEFFICIENTS
from tests.project import library

TEXT_FILES = {".html", ".json", ".js", ".txt", ".vtt", ".xml", ".webmanifest", ".csv", ""}
CHILDREN = (
    # NASEM 2023, Tables 5-8 and 5-12, boys and girls of 3 to 18: the factors of age, height and
    # weight of each activity level (references.md 2.1, S)
    "13.01 13.15 8.62 20.28 12.66 20.46 15.38 23.25",
    "22.25 8.43 17.07 12.77 14.73 11.74 18.34 18.22 14.25 447.51 388.19 671.75 297.54 189.55 709.59",
)
FACTORS = frozenset(" ".join(CHILDREN).split())
ABOUT_A_CHILD = re.compile(
    r"\b(?:child(?:ren)?|kids?|girls?|boys?|niñ[oa]s?|chic[oa]s?|learners?|(?:[3-9]|1[0-8])[- ]years?[- ]old"
    r"|(?:[3-9]|1[0-8]) (?:years|años))\b",
    re.IGNORECASE,
)
NEEDS = re.compile(
    r"\d[\d,.]*\s*kcal (?:a|per|each|every) day|\d[\d,.]*\s*kcal (?:al|por) día"
    r"|(?:needs?|needed|requires?|took|necesitan?|pidió)\b[^.]{0,30}\b\d[\d,.]*\s*kcal",
    re.IGNORECASE,
)
OF_AGE = re.compile(r"(?:\bis|\btiene|[A-Z]\w+,) (\d{1,3}) (?:years|años)\b|\bis (\d{1,3}) and\b")


def said_of_children(text: str) -> list[str]:
    """Sentences that speak of somebody under 19 and of energy needed in a day."""
    words = re.sub(r"\s+", " ", unescape(re.sub(r"<[^>]*>", " ", text)))
    sentences = re.split(r"(?<=[.!?])\s", words)
    return [one for one in sentences if ABOUT_A_CHILD.search(one) and NEEDS.search(one)]


def ages(text: str) -> list[int]:
    """Ages of the people whose days are told."""
    plain = re.sub(r"\s+", " ", unescape(re.sub(r"<[^>]*>", " ", text)))
    return [int(one or other) for one, other in OF_AGE.findall(plain)]


@pytest.fixture(scope="module")
def files(built_site: Path) -> dict[Path, str]:
    """Everything that goes out and is text; the picture of a film is seen by other tests."""
    found = {
        path.relative_to(built_site): path.read_text("utf-8")
        for path in sorted(built_site.rglob("*"))
        if path.is_file() and path.suffix in TEXT_FILES
    }
    assert any("two-days" in str(path) for path in found)
    return found


def test_no_file_says_what_somebody_under_19_needs(files: dict[Path, str]) -> None:
    """product.md, Words: no `day` is about anybody under 19."""
    told = {str(path): said_of_children(text) for path, text in files.items()}
    assert {path: said for path, said in told.items() if said} == {}


def test_no_file_holds_an_equation_of_children(files: dict[Path, str]) -> None:
    assert FACTORS.isdisjoint({one.lstrip("-") for row in COEFFICIENTS.values() for one in row})
    equation = re.compile(r"(?<![\d.])(?:" + "|".join(map(re.escape, FACTORS)) + r") ×")
    assert [str(path) for path, text in files.items() if equation.search(text)] == []


def test_everybody_whose_day_is_told_is_an_adult(files: dict[Path, str]) -> None:
    told = [age for path, text in files.items() if "two-days" in str(path) for age in ages(text)]
    assert told
    assert min(told) >= 19


@pytest.mark.parametrize(
    "planted",
    [
        "Nia is 9 years old. The day of a child of 9 took 1,660&nbsp;kcal.",
        "<p>A girl of that age needs about <b>1,660</b> kcal.</p>",
        "Un niño de 10 años necesita 2,090 kcal.",
        "At 10 years that is 2,090 kcal a day.",
    ],
)
def test_a_planted_sentence_is_seen(planted: str) -> None:
    assert said_of_children(planted)


def test_a_planted_child_is_seen() -> None:
    assert ages("<p>Nia, 9 years: −189.55 − 22.25 × 9</p>") == [9]
    adult = "19.12 Mina, 40 years: 575.77 kcal a day"
    assert not said_of_children(adult)
    assert ages(adult) == [40]


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_day_is_introduced_without_an_age(language: str) -> None:
    """An adult's age stands in the notes alone, where the equation needs it."""
    say = Say(library().words[language])
    assert say("day_person_woman", name="Mina") in {"Mina is made up.", "Mina es inventada."}
