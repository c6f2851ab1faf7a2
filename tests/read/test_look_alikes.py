"""What looks right and is not: spaces that are none, and two versions of a file side by side."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.model.lesson import Lesson
from generator.problems import Problem
from generator.read.draft import draft_place
from generator.read.handwritten import read_page
from generator.read.merge_marks import merge_problem
from generator.read.source import read_source
from tests.project import GOOD, problems, put, read
from tests.site_project import ROOT

HARD = "\u00a0"


def told(text: str) -> list[tuple[int, int]]:
    """Line and column of each space that is none."""
    found = read_source("x.yaml", text).problems
    return [(one.place.line, one.place.column) for one in found if "none to YAML" in one.what]


@pytest.mark.parametrize(
    ("text", "places"),
    [
        (f"a: b\nlist:\n{HARD}{HARD}- c: d\n", [(3, 1)]),
        (f"a:\n  b: c\n {HARD}d: e\n", [(3, 2)]),
        (f"a:{HARD}b\nc: d\n", [(1, 3)]),
        (f"list:\n  - a\n {HARD}- b\n", [(3, 2)]),
        (f"list:\n  -{HARD}a: b\n  - c: d\n", [(2, 4)]),
        (f"a: b\n{HARD}c: d\n", [(2, 1)]),
        ("a:\n\u3000b: c\n", [(2, 1)]),
        (f"say: |\n  Note:{HARD}this\n  {HARD}- stays\n", []),
        (f'say: "Note:{HARD}this\n  {HARD}- stays"\n', []),
        (f"say: two words:{HARD}three\n", []),
        (f"say: 100{HARD}g\nmore: b\n", []),
    ],
    ids=["of a list", "of a key", "after a colon", "swallowed by the entry above", "after a hyphen",
         "of a key at the top", "a wide one", "in a block", "in quotes", "in a text", "before a unit"],
)  # fmt: skip
def test_a_space_that_is_none(text: str, places: list[tuple[int, int]]) -> None:
    assert told(text) == places


def test_brackets_without_end_around_one() -> None:
    text = f"- a\n {HARD}- b\n- {'[' * 990}a{']' * 990}\n"
    assert told(text) == [(2, 2)]


def test_a_lesson_with_one_is_told_that_alone(tmp_path: Path) -> None:
    line = "      sides: [At home, On the way]"
    (problem,) = problems(tmp_path, GOOD.replace(line, line.replace("      ", f"    {HARD} ")))
    assert problem.place.column == 5
    assert problem.hint.startswith("delete it and type a space")


@given(st.text(alphabet="ab:- \n\u00a0|\"'#", max_size=60))
def test_no_text_ends_in_anything_but_problems(text: str) -> None:
    for one in read_source("x.yaml", text).problems:
        assert 1 <= one.place.line <= text.count("\n") + 2


MERGED = """\
<<<<<<< HEAD
title: Soup
=======
title: Stew
>>>>>>> spring
"""


@pytest.mark.parametrize(
    "text", [MERGED, f"a: b\n{MERGED}", MERGED.replace("=======", "||||||| 1\nx\n=======")]
)
def test_marks_of_a_merge(text: str) -> None:
    """git-merge(1), "How conflicts are presented" (from memory, status M)."""
    (problem,) = read_source("x.yaml", text).problems
    first = text.split("<<<<<<<", maxsplit=1)[0].count("\n") + 1
    assert problem.place.line == first
    assert f"to line {text.count(chr(10))}, as a merge left them" in problem.what


def test_what_only_resembles_them() -> None:
    assert merge_problem("x", "Title\n=======\n\n<<<<<<< x\n") is None
    assert merge_problem("x", " <<<<<<< a\n >>>>>>> b\n<<<<<<<< a\n>>>>>>>> b\n") is None


def test_a_merged_draft_is_still_one(tmp_path: Path) -> None:
    assert draft_place(tmp_path, put(tmp_path, f"draft: true\n{MERGED}")) is not None


@pytest.mark.parametrize(
    "typed",
    [
        "prompt: Which #1 thing",
        "prompt: Which side holds more? #todo",
        "prompt: Which side? # ask Ana",
    ],
)
def test_where_a_text_is_cut_off(tmp_path: Path, typed: str) -> None:
    lesson = read(tmp_path, GOOD.replace("prompt: Which side holds more?", typed))
    assert isinstance(lesson, Lesson)
    (place,) = [
        place for path, place in lesson.places.cut.items() if path == ("stops", 1, "ask", "prompt")
    ]
    assert (place.line, place.column) == (12, 7 + typed.index("#"))


def test_the_starter_has_comments_behind_codes_and_numbers_alone(tmp_path: Path) -> None:
    text = (ROOT / "site_data/new_lesson.yaml").read_text("utf-8")
    lesson = read(tmp_path, text)
    assert isinstance(lesson, Lesson)
    assert {path[-1] for path in lesson.places.cut} <= {"for", "one_move_per", "moves"}


def test_a_page_and_captions_that_a_merge_left_half_done(tmp_path: Path) -> None:
    lessons = tmp_path / "lessons"
    lessons.mkdir()
    (lessons / "about.md").write_text(f"# About\n\n{MERGED}", "utf-8")
    page = read_page(tmp_path, "lessons/about.md")
    assert isinstance(page, Problem)
    assert page.place.line == 3
    put(tmp_path, "")
    (lessons / "meal/x.vtt").write_text(f"WEBVTT\n\n{MERGED}", "utf-8")
    lesson = GOOD.replace("grades:", "video: {file: x.mp4, captions: {en: x.vtt}}\ngrades:")
    found = [one for one in problems(tmp_path, lesson) if one.place.path.endswith("x.vtt")]
    assert ["as a merge left them" in one.what for one in found] == [True]
