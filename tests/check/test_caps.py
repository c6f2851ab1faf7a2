"""A count over its move's cap is told, with a step of one move that really is enough."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.check.caps import AT_ONE_STOP, counts_of_a_stop_within_its_cap, counts_within_caps
from generator.model.grades import GradeBand
from generator.problems import Weight
from tests.project import GOOD, library, worked


def lesson(value: int, grades: str, per: str = "10") -> str:
    """The good lesson with one row whose gap is the value."""
    rows = re.sub(
        r"        - \[\{food: apple.*\n",
        f"        - [{{name: A, value: 0, source: x}}, {{name: B, value: {value}, source: x}}]\n",
        GOOD,
    )
    return rows.replace("grades: 3-5", f"grades: {grades}").replace("per: 10", f"per: {per}")


@pytest.mark.parametrize("grades", ["K-2", "3-5", "6-8"])
@pytest.mark.parametrize("value", [600, 777, 1000, 5000, 10_000, 18_600, 20_000])
@pytest.mark.parametrize("per", ["0.1", "1", "7"])
def test_the_step_it_names_is_enough(tmp_path: Path, value: int, grades: str, per: str) -> None:
    text = lesson(value, grades, per)
    found = list(counts_within_caps(worked(tmp_path, text)))
    assert found
    for problem in found:
        assert problem.weight is Weight.MUST
        step = re.findall(r"make `one_move_per` ([\d.]+) or more", problem.hint)[0]
        assert float(step) > float(per)
        assert list(counts_within_caps(worked(tmp_path, lesson(value, grades, step)))) == []


def test_it_points_at_the_move(tmp_path: Path) -> None:
    found = list(counts_within_caps(worked(tmp_path, lesson(5000, "3-5"))))
    assert [str(problem.place).split(":", 1)[1] for problem in found] == ["28:22"]
    assert "`side-step` would be done 500 times" in found[0].what


def test_a_count_at_its_cap_is_fine_and_one_more_is_not(tmp_path: Path) -> None:
    cap = library().moves["side-step"].caps.g3_5
    assert list(counts_within_caps(worked(tmp_path, lesson(cap * 10 + 9, "3-5")))) == []
    assert list(counts_within_caps(worked(tmp_path, lesson(cap * 10 + 10, "3-5")))) != []


def test_the_youngest_grade_decides(tmp_path: Path) -> None:
    caps = library().moves["side-step"].caps
    assert caps.k_2 < caps.g3_5
    text = lesson((caps.k_2 + 1) * 10, "2-5")
    assert "its cap for grades K-2" in next(counts_within_caps(worked(tmp_path, text))).what


def several(tmp_path: Path, *values: int, grades: str = "3-5", per: str = "10") -> list[str]:
    """What is said of a stop with a row for each value, all counted in the same move."""
    rows = "".join(
        f"        - [{{name: A{value}, value: 0, source: x}}, {{name: B{value}, value: {value}, source: x}}]\n"
        for value in values
    )
    text = re.sub(r"(?<=rows:\n)(?:        - .*\n)+", rows, GOOD)
    text = re.sub(r"moves: \[.*\]", f"moves: [{', '.join(['side-step'] * len(values))}]", text)
    text = text.replace("grades: 3-5", f"grades: {grades}").replace("per: 10", f"per: {per}")
    return [problem.hint for problem in counts_of_a_stop_within_its_cap(worked(tmp_path, text))]


def test_four_rows_within_their_own_caps_may_be_too_many_together(tmp_path: Path) -> None:
    """Common practice, no source: fifty of one move is allowed, two hundred at one stop is not."""
    assert several(tmp_path, 300, 290) == []
    assert several(tmp_path, 300, 309) == []  # 30 and 30: as many as are allowed
    told = several(tmp_path, 500, 450, 400, 90)
    assert told == ["make `one_move_per` 25 or more, or let a row `rest`"]
    assert several(tmp_path, 500, 450, 400, 90, per="25") == []


def test_the_cap_of_a_stop_follows_the_youngest_grade(tmp_path: Path) -> None:
    assert AT_ONE_STOP[GradeBand.K_2] < AT_ONE_STOP[GradeBand.G3_5] < AT_ONE_STOP[GradeBand.G6_8]
    assert several(tmp_path, 200, 110, grades="K-2") != []
    assert several(tmp_path, 200, 110) == []
