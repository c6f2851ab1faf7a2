"""What was made of a lesson's name stays as it was printed or imported, whatever the lesson is called later."""

from __future__ import annotations

from pathlib import Path

from generator.compute.result import LessonResult
from generator.model.lesson import Lesson
from generator.present.pages.practice import practice_views
from generator.present.words.say import Say
from generator.steps.filled import worked_out
from tests.project import GOOD, library, read


def called(folder: Path, name: str, *formerly: str) -> LessonResult:
    """The lesson under a name, with those it had before."""
    before = f"formerly: [{', '.join(formerly)}]\n" if formerly else ""
    lesson = read(folder, before + GOOD, name)
    assert isinstance(lesson, Lesson), lesson
    return worked_out(lesson, library())


def test_practice_on_a_sheet_is_that_of_the_first_name(tmp_path: Path) -> None:
    say = Say(library().words["en"])
    first, other, now = (
        practice_views(result, say, 6)
        for result in (
            called(tmp_path, "lunch"),
            called(tmp_path, "snack"),
            called(tmp_path, "meal", "lunch", "snack"),
        )
    )
    assert now == first
    assert now != other
