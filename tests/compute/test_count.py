"""A count and what is left over make the gap again."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.count import count_moves


@given(st.integers(0, 200_000), st.integers(1, 200_000))
def test_counts_and_rest_make_the_gap(gap_tenths: int, per_tenths: int) -> None:
    gap, per = Decimal(gap_tenths) / 10, Decimal(per_tenths) / 10
    count = count_moves(gap, per)
    assert count.whole * per + count.left_over == gap
    assert 0 <= count.left_over < per
    assert count.whole >= 0


@pytest.mark.parametrize(
    ("gap", "per", "whole", "left"),
    [
        ("320", "10", 32, "0"),
        ("75", "10", 7, "5"),
        ("0", "10", 0, "0"),
        ("9", "10", 0, "9"),
        ("2.5", "0.5", 5, "0"),
    ],
)
def test_small_cases(gap: str, per: str, whole: int, left: str) -> None:
    count = count_moves(Decimal(gap), Decimal(per))
    assert (count.whole, count.left_over) == (whole, Decimal(left))


@pytest.mark.parametrize(("gap", "per"), [("-1", "10"), ("10", "0"), ("10", "-5")])
def test_what_cannot_be_counted_is_refused(gap: str, per: str) -> None:
    with pytest.raises(ValueError, match="cannot be counted"):
        count_moves(Decimal(gap), Decimal(per))
