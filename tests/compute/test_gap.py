"""A gap is what a child finds by subtracting the smaller number from the larger."""

from __future__ import annotations

import json
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.count import count_moves
from generator.compute.gap import Gap, total_gap
from generator.compute.label import label_value
from generator.model.measure import Measure
from tests.project import library

EXAMPLES = Path(__file__).parents[1] / "examples"
ROWS = json.loads((EXAMPLES / "arithmetic.json").read_text("utf-8"))["rows"]
SHOWN = st.integers(0, 40_000).map(lambda halves: Decimal(halves) / 2)
GAPS = st.tuples(SHOWN, SHOWN).map(lambda pair: Gap(*pair, Fraction(pair[0] - pair[1])))


@given(GAPS)
def test_the_gap_and_the_smaller_make_the_larger(gap: Gap) -> None:
    assert gap.size >= 0
    assert gap.smaller + gap.size == gap.larger


@given(GAPS)
def test_turned_round_the_gap_is_as_large_and_the_other_side_holds_more(gap: Gap) -> None:
    turned = Gap(gap.second, gap.first, -gap.exact)
    assert turned.size == gap.size
    assert (gap.holder, turned.holder) in {(0, 1), (1, 0), (None, None)}


@given(SHOWN)
def test_equal_sides_leave_nothing_and_neither_holds_more(value: Decimal) -> None:
    gap = Gap(value, value, Fraction(0))
    assert (gap.size, gap.holder) == (0, None)


@given(st.lists(GAPS, min_size=1, max_size=12).map(tuple))
def test_totals_are_sums_of_what_is_shown(gaps: tuple[Gap, ...]) -> None:
    total = total_gap(gaps)
    assert total.first == sum(gap.first for gap in gaps)
    assert total.second == sum(gap.second for gap in gaps)
    assert total.exact == total.first - total.second
    assert total.size <= sum(gap.size for gap in gaps)


@pytest.mark.parametrize(
    ("larger", "smaller", "gap"),
    [
        ("63", "29", "34"),  # Taylor & Francis chapter 9780203053270-5 prints the bug 46 (status R)
        ("42", "18", "24"),  # Taylor & Francis chapter 9780203052969-6 prints the bug 36 (status R)
        ("230", "184", "46"),  # ground beef, each side rounded to whole kcal first (status C)
        ("35", "2", "33"),  # same chapters: the bug gives 23 (status R)
        ("671", "28", "643"),  # same chapters: the bugs together give 557 (status R)
    ],
)
def test_published_subtractions(larger: str, smaller: str, gap: str) -> None:
    first, second = Decimal(larger), Decimal(smaller)
    assert Gap(first, second, Fraction(0)).size == Decimal(gap)
    assert Gap(second, first, Fraction(0)).size == Decimal(gap)


def test_the_order_of_rounding_on_ground_beef() -> None:
    """85 g of broiled patty, 90/10 and 80/20: USDA SR Legacy 217 and 270 kcal per 100 g (status R).

    The shown values 180 and 230 lie 50 apart; before rounding the gap is 45.05 (status C).
    """
    sides = []
    for lean in (90, 80):
        food = library().foods[f"beef-patty-{lean}-broiled"]
        serving, per_100g = food.serving("3 oz"), food.value(Measure.ENERGY)
        assert serving is not None
        assert per_100g is not None
        sides.append(label_value(Measure.ENERGY, Fraction(per_100g) * serving.grams / 100))
    lean_side, other = sides
    gap = Gap(lean_side.value, other.value, lean_side.exact - other.exact)
    assert (lean_side.value, other.value, gap.size, gap.holder) == (180, 230, 50, 1)
    assert abs(gap.exact) == Fraction("45.05")


@pytest.mark.parametrize("case", ROWS, ids=lambda case: str(case["title"]))
def test_rows_worked_out_by_hand_are_what_python_works_out(case: dict[str, Any]) -> None:
    """The browser's arithmetic is held to the same rows, in tests/node/."""
    gap = Gap(Decimal(case["first"]), Decimal(case["second"]), exact=Fraction(0))
    count = count_moves(gap.size, Decimal(case["per"]))
    wanted = Decimal(case["gap"]), case["count"], Decimal(case["left"])
    assert (gap.size, count.whole, count.left_over) == wanted
