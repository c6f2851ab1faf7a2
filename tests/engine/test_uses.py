"""A lesson depends on the foods it names and on the names of all, and on no other food's figures."""

from __future__ import annotations

from generator.check import check_lesson
from generator.engine.library import KnownLibrary
from generator.model.lesson import Lesson
from generator.read.lesson import read_lesson
from generator.steps.filled import worked_out
from tests.project import ROOT, library


def test_a_lesson_asks_for_its_own_foods_alone() -> None:
    watched, asked = KnownLibrary(library(), {}).watched()
    lesson = read_lesson(ROOT, "lessons/river-walk/lesson.yaml", watched)
    assert isinstance(lesson, Lesson)
    result = worked_out(lesson, watched)
    list(check_lesson(result))
    own = {f"foods/{held.food.id}" for held in result.holdings if held.food}
    assert own
    assert {name for name in asked if name.startswith("foods/")} == own
    assert (
        "names/en" in asked
    )  # a food of the library that is not in the lesson is told by its name
