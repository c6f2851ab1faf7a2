"""A day of one apple, or of sixty, is asked about; a long or a short day is not (figures.md D13)."""

from __future__ import annotations

import pytest

from generator.check.whole_day import days_are_whole
from generator.problems import Weight
from tests.worked import worked


@pytest.mark.parametrize(
    ("amount", "says"),
    [
        # 94.64 kcal a medium apple [R: FDC 171688]; a woman of 34, low active: 2,110 kcal [S: NASEM 2023]
        ("1 medium", "gave 90 kcal, less than half of the 2,110 it took"),
        ("11 medium", "gave 1,040 kcal, less than half of the 2,110 it took"),
        ("12 medium", ""),
        ("40 medium", ""),
        ("45 medium", "gave 4,260 kcal, more than twice the 2,110 it took"),
        ("60 medium", "gave 5,680 kcal, more than twice the 2,110 it took"),
    ],
)
def test_apples(amount: str, says: str) -> None:
    result = worked(
        "- day:\n    person: {name: Ada, age: 34, sex: woman, activity: low active}\n"
        f"    ate: [{{food: apple-raw, amount: {amount}}}]\n    did: [Read]\n"
    )
    problems = list(days_are_whole(result))
    assert [problem.what for problem in problems] == ([f"the day of Ada {says}"] if says else [])
    assert all(problem.weight is Weight.QUESTION for problem in problems)
    assert all("under `ate:`" in problem.hint for problem in problems)
