"""Counting up reaches the larger number by round ones. Common practice with open number lines, no source."""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.count_up import count_up

PAIRS = st.tuples(st.integers(0, 50_000), st.integers(0, 50_000)).map(sorted)


@pytest.mark.parametrize(
    ("smaller", "larger", "ends"),
    [
        ("90", "410", "100 400 410"),
        ("184", "230", "190 200 230"),
        ("0", "45", "40 45"),
        ("860", "1420", "900 1400 1420"),
        ("2.5", "7", "3 7"),
        ("2.3", "2.8", "2.8"),
        ("7", "9", "9"),
        ("5", "5", ""),
    ],
)
def test_hops(smaller: str, larger: str, ends: str) -> None:
    made = count_up(Decimal(smaller), Decimal(larger))
    assert [hop.end for hop in made] == [Decimal(end) for end in ends.split()]


@given(PAIRS)
def test_the_hops_together_are_the_gap(pair: list[int]) -> None:
    smaller, larger = (Decimal(tenths) / 10 for tenths in pair)
    made = count_up(smaller, larger)
    assert sum((hop.size for hop in made), Decimal(0)) == larger - smaller
    assert all(hop.size > 0 for hop in made)
    assert all(before.end == after.start for before, after in pairwise(made))
    assert len(made) <= 7  # three up, three on, and a tenth


@pytest.mark.parametrize(("smaller", "larger"), [("10", "9"), ("-1", "5")])
def test_counting_up_never_goes_backwards(smaller: str, larger: str) -> None:
    with pytest.raises(ValueError, match="no counting up"):
        count_up(Decimal(smaller), Decimal(larger))
