"""A language without a folder: digits before a unit are checked, and nothing right is questioned."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from generator.check.spoken_numbers import spoken_numbers
from tests.caption_lesson import LESSON, filed
from tests.project import worked


def told(folder: Path, words: str, language: str = "fr") -> list[str]:
    """What is said of captions in a lesson of that language."""
    result = worked(folder, LESSON)
    captions = {language: filed([(31, 35, words)], language)}
    lesson = replace(result.lesson, language=language, captions=captions)
    return [
        one.what for one in spoken_numbers(replace(result, lesson=lesson)) if "at 0:3" in one.what
    ]


@pytest.mark.parametrize(
    "words",
    [
        "Le porridge contient 170 kcal.",
        "Environ 175 kcal, dit-elle.",  # within 10 %: whether it is said roughly is not known
        "La différence est de 90 kcal.",
        "1 020 kcal, ou 1.020 kcal, ou 1,020 kcal",
        "Rangée 2, page 77, 3 pommes, 500.",
        "Deux cent cinquante kcal.",
    ],
)
def test_let_through(tmp_path: Path, words: str) -> None:
    assert told(tmp_path, words) == []


@pytest.mark.parametrize("number", ["340", "2.400", "7,5"])
def test_digits_that_no_number_of_the_lesson_is_near(tmp_path: Path, number: str) -> None:
    (what,) = told(tmp_path, f"Le jus contient {number} kcal.")
    assert what == f"at 0:31, “{number}” is no number of the lesson here"


def test_a_food_that_is_named_without_its_number_is_left_alone(tmp_path: Path) -> None:
    """It may well be said in words."""
    assert told(tmp_path, "Oatmeal. Plain bagel.") == []
