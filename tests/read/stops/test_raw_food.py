"""A food that is raw and eaten only cooked stands in no lesson."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.problems import Problem
from generator.read.lesson import read_lesson
from tests.project import GOOD, library


def with_raw(record: str) -> Library:
    """The library with one raw food more."""
    food = library().foods["oatmeal-cooked"]
    entry = food.entry.model_copy(update={"raw": True, "record": record, "fdc": 1})
    return replace(
        library(), foods={**library().foods, "new-raw": replace(food, id="new-raw", entry=entry)}
    )


def read(folder: Path, text: str, foods: Library) -> list[Problem]:
    file = folder / "lessons" / "try" / "lesson.yaml"
    file.parent.mkdir(parents=True)
    file.write_text(text, encoding="utf-8")
    lesson = read_lesson(folder, "lessons/try/lesson.yaml", foods)
    assert not isinstance(lesson, Lesson)
    return list(lesson)


@pytest.mark.parametrize(
    ("record", "way_out"),
    [
        # Titles of SR Legacy [R]
        ("Lentils, raw", "take `lentils-boiled`, or look for a cooked one"),
        (
            "Cassava, raw",
            'look for a cooked one with: python3 generator foods find "cassava cooked"',
        ),
    ],
)
def test_a_lesson_that_names_it_is_told_what_to_take(
    tmp_path: Path, record: str, way_out: str
) -> None:
    """Raw cassava gives off cyanide, raw dry beans hold a poison (from memory)."""
    (one,) = read(tmp_path, GOOD.replace("food: oatmeal-cooked", "food: new-raw"), with_raw(record))
    assert one.what == "`new-raw` is raw, and nobody eats it before it is cooked"
    assert one.hint.startswith(way_out)
    assert one.place.line == GOOD[: GOOD.index("food: oatmeal-cooked")].count("\n") + 1


def test_nobody_is_told_to_take_it_for_another(tmp_path: Path) -> None:
    (one,) = read(
        tmp_path, GOOD.replace("food: oatmeal-cooked", "food: new-rew"), with_raw("Lentils, raw")
    )
    assert "new-raw" not in one.hint


def test_an_editor_does_not_offer_it() -> None:
    assert "new-raw" not in with_raw("Lentils, raw").eatable
    assert library().eatable == tuple(library().foods)
