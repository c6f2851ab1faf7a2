"""Everything that differs between two states of a lesson is said, once, and nothing else."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from generator.model.figure import FigureKind
from generator.model.published import LessonState, PublishedNumber
from generator.present.updates.differences import ChangeKind, differences
from generator.present.updates.said import said_changes
from generator.present.words.say import Say
from tests.project import library

APPLE = PublishedNumber(Decimal(95), "kcal", FigureKind.HOLDS, "Apple, 1 medium")
GAP = PublishedNumber(Decimal(320), "kcal", FigureKind.GAP, "Apple, Apple pie")
COUNT = PublishedNumber(Decimal(32), "times", FigureKind.COUNT, "Apple, Apple pie")
BEFORE = LessonState(
    at="2026-01-01T00:00:00Z",
    language="en",
    title="Soup night",
    numbers={"lunch.r.home": APPLE, "lunch.r.gap": GAP, "lunch.r.count": COUNT},
    stamps={"worksheet": "K7Q2FM", "cards": "M2RT4D"},
    stops={"lunch": "Two lunches", "talk": "Talk it over"},
    times={"lunch": "1:10"},
    pages=("index.html", "cards.html", "lunch.chart.json"),
    texts="9ab2",
)
ONE_EACH = {
    "a gap": (
        {"numbers": {**BEFORE.numbers, "lunch.r.gap": replace(GAP, value=Decimal(310))}},
        "The gap (Apple, Apple pie): 310\N{NO-BREAK SPACE}kcal now, 320\N{NO-BREAK SPACE}kcal before.",
    ),
    "a count names no food": (
        {"numbers": {**BEFORE.numbers, "lunch.r.count": replace(COUNT, value=Decimal(31))}},
        "The count (Two lunches): 31 now, 32 before.",
    ),
    "a number gone": (
        {"numbers": {k: v for k, v in BEFORE.numbers.items() if k != "lunch.r.count"}},
        "No longer here: the count (Two lunches). It was 32.",
    ),
    "a number new": (
        {"numbers": {**BEFORE.numbers, "lunch.x": replace(APPLE, of="Pear, 1")}},
        "New: Pear, 1, 95\N{NO-BREAK SPACE}kcal.",
    ),
    "a food called otherwise": (
        {"numbers": {**BEFORE.numbers, "lunch.r.home": replace(APPLE, of="Red apple, 1 medium")}},
        "“Apple, 1 medium” is called “Red apple, 1 medium” now; its numbers are as they were.",
    ),
    "rows in another order": (
        {"numbers": dict(reversed(BEFORE.numbers.items()))},
        "The rows of “Two lunches” come in another order.",
    ),
    "a sheet": (
        {"stamps": {**BEFORE.stamps, "worksheet": "AAAAAA"}},
        "Sheets printed before say something else now: Worksheet (K7Q2FM).",
    ),
    "a stop gone": (
        {"stops": {"lunch": "Two lunches"}},
        "The part “Talk it over” is no longer here.",
    ),
    "a stop new": (
        {"stops": {**BEFORE.stops, "more": "One more"}},
        "A new part: “One more”.",
    ),
    "a stop at another address": (
        {"stops": {"lunch": "Two lunches", "words": "Talk it over"}},
        "The part “Talk it over” has another address.",
    ),
    "a stop called otherwise": (
        {"stops": {**BEFORE.stops, "talk": "Talk"}},
        "The part “Talk it over” is called “Talk” now.",
    ),
    "stops in another order": (
        {"stops": dict(reversed(BEFORE.stops.items()))},
        "The parts come in another order.",
    ),
    "a time": ({"times": {"lunch": "1:20"}}, "“Two lunches” is at 1:20 in the video now, before at 1:10."),
    "a title": ({"title": "Soup"}, "This lesson is called “Soup” now. It was “Soup night”."),
    "a page gone": (
        {"pages": ("index.html", "lunch.chart.json")},
        "No longer here: Movement cards.",
    ),
    "a paper new": (
        {"pages": (*BEFORE.pages, "papers/worksheet-large-a4.pdf")},
        "New: Worksheet (worksheet-large-a4.pdf).",
    ),
    "texts": ({"texts": "other"}, "Some texts are worded differently."),
}  # fmt: skip


def say(language: str = "en") -> Say:
    return Say(library().words[language])


@pytest.mark.parametrize("case", ONE_EACH)
def test_one_thing_that_differs_is_one_sentence(case: str) -> None:
    changed, sentence = ONE_EACH[case]
    now = replace(BEFORE, **changed)  # type: ignore[arg-type]  # a table of any of its fields
    assert [one.text for one in said_changes(BEFORE, now, say())] == [sentence]
    assert len(differences(now, BEFORE)) == 1


def test_a_stop_that_says_what_it_was_called_is_the_same_stop() -> None:
    """With its numbers and times; only its address differs, and what its heading became."""
    now = replace(
        BEFORE,
        numbers={name.replace("lunch.", "meal."): one for name, one in BEFORE.numbers.items()},
        stops={"meal": "Two meals", "talk": "Talk it over"},
        times={"meal": "1:10"},
        formerly={"lunch": "meal"},
    )
    kinds = [one.kind for one in differences(BEFORE, now)]
    assert kinds == [ChangeKind.STOP_ADDRESS, ChangeKind.STOP_NAME]


def test_what_says_the_same_is_no_change() -> None:
    assert differences(BEFORE, replace(BEFORE, at="2026-02-01T00:00:00Z")) == ()


def test_a_lesson_comes_and_goes() -> None:
    gone = LessonState(at="2026-02-01T00:00:00Z", language="en", gone=True)
    kinds = [
        [one.kind for one in differences(old, new)]
        for old, new in ((None, BEFORE), (BEFORE, None), (BEFORE, gone), (gone, BEFORE))
    ]
    new, lost = ChangeKind.LESSON_NEW, ChangeKind.LESSON_GONE
    assert kinds == [[new], [lost], [lost], [new]]
    assert differences(None, None) == differences(gone, None) == differences(None, gone) == ()


def test_a_file_that_only_pages_fetch_is_a_difference_and_nobody_is_told() -> None:
    now = replace(BEFORE, pages=("index.html", "cards.html"))
    assert [one.name for one in differences(BEFORE, now)] == ["lunch.chart.json"]
    assert said_changes(BEFORE, now, say()) == ()


def test_what_matters_most_is_said_first() -> None:
    now = replace(
        BEFORE,
        texts="other",
        title="Soup",
        numbers={**BEFORE.numbers, "lunch.r.gap": replace(GAP, value=Decimal(1))},
    )
    kinds = [one.kind for one in said_changes(BEFORE, now, say("es"))]
    assert kinds == [ChangeKind.NUMBER, ChangeKind.TITLE, ChangeKind.TEXTS]


def test_minutes_of_the_notes_are_for_teachers() -> None:
    minutes = PublishedNumber(Decimal(9), "minutes", FigureKind.MINUTES, "Apple")
    (said,) = said_changes(
        BEFORE, replace(BEFORE, numbers={**BEFORE.numbers, "walk.r.minutes": minutes}), say()
    )
    assert said.for_teachers
    assert "Apple" not in said.text
