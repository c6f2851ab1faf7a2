"""A lesson is asked about numbers from beyond its grades, or from far below them, with the standard's code."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check.grade_fit import numbers_fit_the_grades
from generator.problems import Weight
from tests.project import worked

LESSON = """\
title: Two bowls
summary: Find the gap.
grades: {grades}
minutes: 10
goals: [Subtract.]
stops:
  - compare:
      id: bowls
      measure: fiber
      sides: [One, Other]
      rows:
        - [{{name: A, value: {first}, source: card}}, {{name: B, value: {second}, source: card}}]
      solve: [gap, count]
  - move: {{for: bowls, one_move_per: {per}, moves: [march]}}
"""


def asked(root: Path, **values: object) -> list[str]:
    result = worked(root, LESSON.format(**values))
    problems = list(numbers_fit_the_grades(result))
    assert all(one.weight is Weight.QUESTION and one.place.line == 3 for one in problems)
    return [f"{one.what}: {one.hint}" for one in problems]


@pytest.mark.parametrize("grades", ["4", "4-6", "3-5", "2"])
def test_numbers_of_the_grades_are_not_asked_about(tmp_path: Path, grades: str) -> None:
    assert asked(tmp_path, grades=grades, first=410, second=90, per=10) == []


def test_a_divisor_of_two_digits_is_beyond_grade_four(tmp_path: Path) -> None:
    [told] = asked(tmp_path, grades="3-4", first=92, second=20, per=12)
    assert "dividing by a number of two digits (grade 5, 5.NBT.B.6)" in told
    assert "reach to 5" in told


def test_gaps_within_twenty_are_far_below_grade_four(tmp_path: Path) -> None:
    [told] = asked(tmp_path, grades="4-5", first=16, second=9, per=2)
    assert "no more than subtracting within 20 (grade 1, 1.OA.C.6)" in told
    assert "begin at 2: 2-5" in told


def test_tenths_are_never_far_below(tmp_path: Path) -> None:
    assert asked(tmp_path, grades="5-6", first="4.5", second=2, per=1) == []
