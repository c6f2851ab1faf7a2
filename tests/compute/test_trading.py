"""Trading is what a column subtraction asks for, told apart as the documented bugs tell it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.mistakes import Mistake, bug_answers
from generator.compute.trading import Trading, trading


@pytest.mark.parametrize(
    ("top", "bottom", "asks"),
    [
        # worked on paper [C]
        (410, 90, Trading.TENS),
        (250, 110, Trading.NONE),
        (230, 184, Trading.TENS),
        (300, 184, Trading.ZERO),
        (200, 45, Trading.ZERO),
        (200, 110, Trading.TENS),  # the 0 lends nothing: it only borrows
        (310, 184, Trading.TENS),  # the ten is lent, and what is left of it is no 0 from before
        (1000, 1, Trading.ZERO),
        (7, 7, Trading.NONE),
        (0, 0, Trading.NONE),
    ],
)
def test_by_hand(top: int, bottom: int, asks: Trading) -> None:
    assert trading(top, bottom) is asks


PAIRS = st.tuples(st.integers(0, 3000), st.integers(0, 3000)).map(sorted)


@given(PAIRS)
def test_without_trading_no_digit_is_too_small(two: list[int]) -> None:
    bottom, top = two
    digits = zip(reversed(f"{top:04}"), reversed(f"{bottom:04}"), strict=True)
    assert (trading(top, bottom) is Trading.NONE) == all(a >= b for a, b in digits)


@given(PAIRS)
def test_across_a_zero_as_school_does_it(two: list[int]) -> None:
    """From the ones on: a digit that is too small takes a ten from the next that is not 0; zeros between become 9."""
    bottom, top = two
    upper, lower = ([int(digit) for digit in reversed(f"{one:05}")] for one in (top, bottom))
    past_zero = False
    for place, digit in enumerate(lower):
        if upper[place] < digit:
            lender = next(at for at in range(place + 1, 5) if upper[at])
            upper[lender] -= 1
            upper[place + 1 : lender] = [9] * (lender - place - 1)
            past_zero = past_zero or lender > place + 1
    assert (trading(top, bottom) is Trading.ZERO) == past_zero


@given(PAIRS)
def test_where_the_bug_of_skipping_a_zero_can_happen_one_stands(two: list[int]) -> None:
    """Brown & Burton 1978, as ``mistakes.py`` plays it."""
    bottom, top = two
    if bug_answers(top, bottom)[Mistake.ACROSS_ZERO]:
        assert trading(top, bottom) is Trading.ZERO


def test_more_than_there_is() -> None:
    with pytest.raises(ValueError, match="3 is smaller than 4"):
        trading(3, 4)
