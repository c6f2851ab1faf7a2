"""What the page for finish codes fetches of a lesson, and that the lesson page has the same places."""

from __future__ import annotations

import json
from typing import Any

import pytest

from generator.compute.finish_layout import finish_layout
from generator.compute.result import LessonResult
from generator.present.finish_file import finish_json
from generator.present.words.say import Say
from tests.html_page import text
from tests.present.test_notes import pages
from tests.project import library
from tests.site_data.test_lessons import RESULTS

DEMO = sorted(RESULTS)


def told(result: LessonResult, language: str = "en") -> dict[str, Any]:
    found: dict[str, Any] = json.loads(finish_json(result, Say(library().words[language])))
    return found


@pytest.mark.parametrize("lesson", DEMO)
def test_it_has_the_places_of_the_layout(lesson: str) -> None:
    result = RESULTS[lesson]
    layout, file = finish_layout(result), told(RESULTS[lesson])
    assert (file["lesson"], file["numbers"]) == (layout.lesson, layout.numbers)
    assert tuple(one["id"] for one in file["stops"]) == layout.stops
    assert tuple(one["id"] for one in file["answers"]) == layout.answers
    assert tuple(one["again"] for one in file["twice"]) == layout.asked_again
    assert {one["stop"] for one in file["answers"]} <= set(layout.stops)


@pytest.mark.parametrize("lesson", DEMO)
def test_every_answer_has_a_name_of_its_own(lesson: str) -> None:
    names = [one["name"] for one in told(RESULTS[lesson])["answers"]]
    assert len(set(names)) == len(names)


@pytest.mark.parametrize("lesson", DEMO)
def test_the_lesson_page_begins_its_codes_with_the_same_marks(lesson: str) -> None:
    layout, page = finish_layout(RESULTS[lesson]), pages(RESULTS[lesson])["index.html"]
    thread = next(page.iter("lesson-thread"))
    assert thread.get("data-finish") == f"{layout.lesson}.{layout.numbers}"


def test_what_is_said_of_a_wrong_answer_is_what_the_notes_say() -> None:
    notes = text(pages(RESULTS["soup-night"])["notes.html"])
    said = [
        slip["says"] for one in told(RESULTS["soup-night"])["answers"] for slip in one["likely"]
    ]
    rows = [one for one in said if one.startswith("Not yet.")]
    assert len(rows) > 10
    assert all(one in notes for one in rows)


def test_of_a_question_its_hint_is_said_also_where_it_is_asked_again() -> None:
    answers = {one["id"]: one["likely"] for one in told(RESULTS["soup-night"])["answers"]}
    assert answers["whole-pot.answer"][0]["says"] == "Double it, and double it again."
    assert answers["parting.answer"][0]["says"].startswith("What does a whole cup hold?")
    assert answers["the-most-again.answer"][0]["says"].startswith("You cannot see sodium.")


def test_a_day_says_what_a_wrong_subtraction_means() -> None:
    answers = {one["id"]: one for one in told(RESULTS["two-days"])["answers"]}
    assert answers["rainy-day.lean"]["likely"]


def test_in_another_language_it_is_the_same_but_for_its_words() -> None:
    english, spanish = told(RESULTS["river-walk"]), told(RESULTS["river-walk"], "es")
    assert "Row 2, the gap" in english["answers"][1]["name"]
    assert "Fila 2, la diferencia" in spanish["answers"][1]["name"]
    assert [one["id"] for one in spanish["answers"]] == [one["id"] for one in english["answers"]]


def test_the_notes_lead_to_the_page_that_reads_codes() -> None:
    """Above everything that is read: a teacher finds it without scrolling."""
    notes = pages(RESULTS["soup-night"])["notes.html"]
    before: list[str] = []
    for element in notes.iter():
        if element.get("id") == "goals":
            break
        before.append(element.get("href", ""))
    assert "../codes.html" in before
