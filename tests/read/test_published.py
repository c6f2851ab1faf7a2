"""The record of publications is read whatever git and people made of it, or refused in a sentence."""

from __future__ import annotations

import json
from decimal import Decimal
from pathlib import Path

import pytest

from generator.model.figure import FigureKind
from generator.model.published import SITE_RECORD, PublishedNumber, lesson_record
from generator.problems import LessonError
from generator.read.published import read_lesson_record, read_published

NUMBERS = {
    "numbers": "k3f9",
    "language": "en",
    "are": {"lunch.gap": {"value": "320", "unit": "kcal", "kind": "gap", "of": "Both"}},
}
OLD = {"at": "2026-01-01T00:00:00Z", "language": "en", "title": "Old", "numbers": "k3f9"}
NEW = {**OLD, "at": "2026-02-01T00:00:00Z", "title": "New"}
GONE = {"at": "2026-03-01T00:00:00Z", "language": "en", "gone": True}
OUT = {"at": OLD["at"], "program": "0.3", "address": "", "languages": ["en"], "lessons": ["soup"]}


def recorded(root: Path, *lines: object, path: str = lesson_record("soup")) -> Path:
    """A site with a record."""
    file = root / path
    file.parent.mkdir(parents=True, exist_ok=True)
    text = (one if isinstance(one, str) else json.dumps(one) for one in lines)
    file.write_text("".join(f"{one}\n" for one in text), "utf-8")
    return root


def test_states_come_in_the_order_of_their_times(tmp_path: Path) -> None:
    """As two branches put them side by side: out of order, and some twice."""
    states = read_lesson_record(recorded(tmp_path, NEW, GONE, NUMBERS, OLD, NEW), "soup")
    assert [(one.title, one.gone) for one in states] == [("Old", False), ("New", False), ("", True)]
    gap = PublishedNumber(Decimal(320), "kcal", FigureKind.GAP, "Both")
    assert states[1].numbers == {"lunch.gap": gap}


def test_a_site_that_never_went_out_has_an_empty_record(tmp_path: Path) -> None:
    assert read_published(tmp_path).publications == ()
    assert read_lesson_record(tmp_path, "soup") == ()


def test_publications_and_lessons_are_read_together(tmp_path: Path) -> None:
    recorded(tmp_path, OUT, OUT, path=SITE_RECORD)
    held = read_published(recorded(tmp_path, NUMBERS, OLD, NEW))
    assert [one.lessons for one in held.publications] == [("soup",)]
    last = held.last("soup", "en")
    assert last is not None
    assert last.title == "New"
    assert held.last("soup", "es") is None


BROKEN = {
    "cut off": (json.dumps(OLD)[:20], "is not whole"),
    "no object": ("[]", "is not whole"),
    "a mark of a merge": ("<<<<<<< HEAD", "unfinished merge"),
    "numbers that are nowhere": (json.dumps({**OLD, "numbers": "none"}), "numbers `none`"),
    "a time that is none": (json.dumps({**OLD, "at": "yesterday"}), "cannot be read at `at`"),
    "of a newer program": (json.dumps({**OLD, "mood": "good"}), "update this one"),
}


@pytest.mark.parametrize("case", BROKEN)
def test_a_line_that_cannot_be_read_is_told_with_its_place(tmp_path: Path, case: str) -> None:
    line, said = BROKEN[case]
    with pytest.raises(LessonError) as caught:
        read_published(recorded(tmp_path, NUMBERS, OLD, line))
    (problem,) = caught.value.problems
    assert said in str(problem)
    assert str(problem).startswith(f"{lesson_record('soup')}:3:1: ")
    assert problem.hint
