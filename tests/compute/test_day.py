"""A day leans the way its two shown numbers say."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.day import ABOUT_EVEN, DayBalance, Lean, day_balance


@pytest.mark.parametrize(
    ("eaten", "lean"),
    # The band of 10 % is ours, no source; both ends are meant.
    [
        (1799, Lean.NEEDED),
        (1800, Lean.EVEN),
        (2000, Lean.EVEN),
        (2200, Lean.EVEN),
        (2201, Lean.EATEN),
    ],
)
def test_lean(eaten: int, lean: Lean) -> None:
    assert DayBalance(Decimal(eaten), Decimal(2000)).lean is lean


def test_the_need_is_shown_like_energy_on_a_label() -> None:
    """21 CFR 101.9(c)(1) [S]: to the nearest 10 kcal above 50; a tie goes up, our reading."""
    assert day_balance([Decimal(90)], Decimal("1844.99")).needed == 1840
    assert day_balance([Decimal(90)], Decimal(1845)).needed == 1850


def test_the_gap_is_that_of_the_shown_numbers() -> None:
    balance = day_balance([Decimal(410), Decimal(90), Decimal(45)], Decimal("1843.2"))
    assert (balance.eaten, balance.needed, balance.gap) == (545, 1840, 1295)
    assert balance.ratio == Fraction(545, 1840)


@given(st.integers(0, 6000), st.integers(10, 6000))
def test_lean_and_ratio_agree(eaten: int, needed: int) -> None:
    balance = DayBalance(Decimal(eaten), Decimal(needed))
    match balance.lean:
        case Lean.EATEN:
            assert eaten > needed
            assert balance.ratio > 1 + ABOUT_EVEN
        case Lean.NEEDED:
            assert eaten < needed
            assert balance.ratio < 1 - ABOUT_EVEN
        case Lean.EVEN:
            assert 10 * balance.gap <= needed


@pytest.mark.parametrize(("needed", "most"), [(2110, 211), (2470, 247), (10, 1)])
def test_the_largest_even_gap_is_a_tenth_and_whole(needed: int, most: int) -> None:
    """The band of 10 % is ours, no source; what a day took is shown in tens, so a tenth is whole."""
    assert DayBalance(Decimal(0), Decimal(needed)).even_within == most
    assert DayBalance(Decimal(needed - most), Decimal(needed)).lean is Lean.EVEN
    assert DayBalance(Decimal(needed - most - 1), Decimal(needed)).lean is Lean.NEEDED


def test_a_day_without_food_leans_to_what_is_needed() -> None:
    assert day_balance([], Decimal(1800)).lean is Lean.NEEDED


@pytest.mark.parametrize(
    ("foods", "need"), [([Decimal(-5)], "1800"), ([Decimal(90)], "0"), ([], "-20")]
)
def test_refusals(foods: list[Decimal], need: str) -> None:
    with pytest.raises(ValueError, match=r"cannot hold less|nobody needs"):
        day_balance(foods, Decimal(need))
