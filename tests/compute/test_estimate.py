"""A sensible estimate rounds both numbers, and its line has room for all of them.

Rounding to the nearest ten or hundred: Common Core State Standards for Mathematics, 3.NBT.A.1 (S).
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.author.trace_text import trace_lines
from generator.compute.estimate import line_for, rounded
from generator.compute.gap import Gap
from tests.project import GOOD, problems, worked


@pytest.mark.parametrize(
    ("first", "second", "near"),
    [
        ("410", "90", (400, 100, 300)),
        ("280", "420", (400, 300, 100)),
        ("770", "1200", (1200, 800, 400)),
        ("45", "0", (50, 0, 50)),
        ("36", "9", (40, 10, 30)),
        ("16", "9", (20, 10, 10)),
        ("6", "2", (6, 2, 4)),
        ("6.5", "2", (7, 2, 5)),
        ("12400", "9600", (12000, 10000, 2000)),
        ("21", "21", (20, 20, 0)),
    ],
)
def test_both_numbers_are_rounded_to_one_place(
    first: str, second: str, near: tuple[int, int, int]
) -> None:
    found = rounded(Gap(Decimal(first), Decimal(second), Fraction(0)))
    assert (found.larger, found.smaller, found.gap) == near


@given(st.decimals(Decimal("0.1"), 20_000, places=1))
def test_the_line_reaches_every_number_in_few_round_steps(largest: Decimal) -> None:
    line = line_for(largest)
    assert line.ticks[0] == 0
    assert line.ticks[-1] == line.end >= largest > line.end - line.step
    assert len(line.ticks) <= (6 if largest >= 1000 else 9), "numbers of four digits want more room"
    assert str(line.step).strip("0") in {"1", "2", "5"}


ESTIMATE = "      measure: energy\n      estimate: {{prompt: About how much?, {rest}}}\n"


def with_estimate(rest: str) -> str:
    return GOOD.replace("      measure: energy\n", ESTIMATE.format(rest=rest))


@pytest.mark.parametrize(
    ("rest", "name", "says"),
    [
        ("", "bagel-plain_oatmeal-cooked", "260 and 170 to the nearest 100: 300 − 200 = 100"),
        ("row: total", "total", "370 and 250 to the nearest 100: 400 − 300 = 100"),
    ],
)
def test_it_stands_in_the_ledger_with_its_step(
    tmp_path: Path, rest: str, name: str, says: str
) -> None:
    lines = list(trace_lines(worked(tmp_path, with_estimate(rest)).figures))
    assert lines[lines.index(f"breakfast.{name}.estimate: 100 kcal") + 1].endswith(says)


def test_a_row_that_is_not_there_is_told_at_its_place(tmp_path: Path) -> None:
    [problem] = problems(tmp_path, with_estimate("row: second"))
    assert problem.what == "there is no row `second` here"
    assert problem.place.line == 19


def test_choices_differ(tmp_path: Path) -> None:
    [problem] = problems(tmp_path, with_estimate("choices: [100, 100]"))
    assert "different `choices:`" in problem.what
