"""The wrong answers a teacher is told to look for: the published bugs, and never the right answer."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.gap import Gap
from generator.compute.likely import likely_answers
from generator.compute.mistakes import Mistake, gap_mistake


def gap(first: str, second: str) -> Gap:
    return Gap(Decimal(first), Decimal(second), Fraction(first) - Fraction(second))


def told(first: str, second: str) -> dict[str, Mistake]:
    return {
        str(answer.normalize()): mistake for answer, mistake in likely_answers(gap(first, second))
    }


def test_the_bugs_of_a_subtraction_that_borrows() -> None:
    """C: by hand from the descriptions of Brown & Burton 1978 (references.md): 42 − 15 is 27."""
    assert told("42", "15") == {
        "33": Mistake.SMALLER_FROM_LARGER,
        "37": Mistake.NO_DECREMENT,
        "57": Mistake.ADDED,
    }


def test_which_side_holds_more_makes_no_difference() -> None:
    assert told("15", "42") == told("42", "15")


@pytest.mark.parametrize(("first", "second"), [("88", "24"), ("99", "35")])
def test_where_nothing_is_borrowed_the_right_answer_is_no_mistake(first: str, second: str) -> None:
    """Column by column, the bugs come out right: 64 is the answer and no *smaller from larger*."""
    assert "64" not in told(first, second)
    assert set(told(first, second).values()) == {Mistake.ADDED}


def test_two_sides_alike_leave_nothing_to_get_wrong() -> None:
    assert told("120", "120") == {}


@pytest.mark.parametrize(
    ("first", "second", "wrong"),
    [("16", "9", {"6", "8"}), ("6", "2", {"3", "5"}), ("1", "0", {"2"})],
)
def test_below_twenty_children_miscount_by_one(first: str, second: str, wrong: set[str]) -> None:
    """Common practice, no source: at this size they count, and no digit stands under another."""
    assert told(first, second) == dict.fromkeys(wrong, Mistake.ONE_OFF)


HALVES = st.integers(0, 40_000).map(lambda halves: Decimal(halves) / 2)


@given(first=HALVES, second=HALVES)
def test_every_one_is_wrong_and_is_read_as_that_mistake(first: Decimal, second: Decimal) -> None:
    """What the notes call an answer is what the page calls it when a learner enters it."""
    one = Gap(first, second, Fraction(first - second))
    for answer, mistake in likely_answers(one):
        assert answer != one.size
        assert gap_mistake(one.larger, one.smaller, answer) == mistake
