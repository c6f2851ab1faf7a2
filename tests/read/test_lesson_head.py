"""The top of a lesson file is read without its stops, and a broken one is nobody's neighbour."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.model.grades import Grades
from generator.read.lesson_head import LessonHead, head_from, head_text
from tests.project import GOOD, put

HEAD = LessonHead("Two breakfasts", "", Grades(3, 5), None)


def head(folder: Path, text: str) -> LessonHead | None:
    return head_from(head_text(folder, put(folder, text)))


def test_title_grades_order_and_what_it_needs(tmp_path: Path) -> None:
    text = GOOD.replace(
        "minutes: 10", "minutes: 10\norder: 4\narithmetic: subtracting within 1,000"
    )
    told = LessonHead("Two breakfasts", "subtracting within 1,000", Grades(3, 5), 4)
    assert head(tmp_path, text) == told
    assert head(tmp_path, GOOD) == HEAD


def test_what_is_wrong_below_the_stops_does_not_hide_the_title(tmp_path: Path) -> None:
    assert head(tmp_path, GOOD + "  - : [\n") == HEAD


@pytest.mark.parametrize(
    ("title", "shown"),
    [
        ("A {{b}} of c", "A {b} of c"),
        ("{{7*7}} {{ x }}", "{7*7} { x }"),
        ("Somebody says {26}", "Somebody says 26"),
    ],
)
def test_a_brace_that_is_meant_as_one_and_a_number_that_is_meant_are_shown(
    tmp_path: Path, title: str, shown: str
) -> None:
    found = head(tmp_path, GOOD.replace("title: Two breakfasts", f"title: '{title}'"))
    assert found
    assert found.title == shown


def test_a_title_below_the_stops_is_found_too(tmp_path: Path) -> None:
    first, rest = GOOD.split("\n", 1)
    assert head(tmp_path, f"{rest}{first}\n") == HEAD


def test_a_translation_has_no_grades(tmp_path: Path) -> None:
    assert head(tmp_path, "title: Dos\nsummary: Una.\n") == LessonHead("Dos", "", None, None)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "- a list",
        "title: [",
        "title: ''\n",
        "title: 12\n",
        "title: The gap is {a.b}\n",
        "title: 'A {{b}} and {a.b}'\n",
        "title: '{{{a.b}'\n",
        "summary: No title.\n",
        b"title: \xff\n",
    ],
)
def test_where_no_title_can_be_read_there_is_no_head(tmp_path: Path, text: str | bytes) -> None:
    assert head_from(head_text(tmp_path, put(tmp_path, text))) is None


def test_a_file_that_is_not_there_has_no_head(tmp_path: Path) -> None:
    assert head_from(head_text(tmp_path, "lessons/none/lesson.yaml")) is None


@pytest.mark.parametrize("grades", ["5-3", "9", "many"])
def test_grades_that_are_none_are_left_out(tmp_path: Path, grades: str) -> None:
    found = head(tmp_path, GOOD.replace("grades: 3-5", f"grades: {grades}"))
    assert found
    assert found.grades is None
