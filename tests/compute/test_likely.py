"""The wrong answers a teacher is told to look for: the published bugs, and never the right answer."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.gap import Gap
from generator.compute.likely import SumSlip, likely_answers, likely_counts, likely_sums
from generator.compute.mistakes import Mistake, count_mistake, gap_mistake


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


def test_taking_nothing_away_is_the_trap_of_a_row_with_0() -> None:
    """texts.md 2.3: 45 − 0 = 0."""
    assert told("45", "0") == {"0": Mistake.TOOK_ZERO}


def counts(gap_size: str, per: str) -> dict[str, Mistake]:
    return {
        str(answer): mistake for answer, mistake in likely_counts(Decimal(gap_size), Decimal(per))
    }


@pytest.mark.parametrize(
    ("size", "per", "wrong"),
    [
        (
            "45",
            "10",
            {"45": "forgot_to_divide", "5": "counted_left_over", "4.5": "counted_left_over"},
        ),
        (
            "270",
            "20",
            {
                "270": "forgot_to_divide",
                "14": "counted_left_over",
                "13.5": "counted_left_over",
                "27": "counted_tens",
                "135": "divided_by_tens",
                "10": "gave_left_over",
                "2": "counted_hundreds",
            },
        ),
        (
            "320",
            "10",
            {"320": "forgot_to_divide", "3": "counted_hundreds", "30": "stopped_at_hundreds"},
        ),
        ("0", "10", {}),
    ],
)
def test_wrong_counts_by_hand(size: str, per: str, wrong: dict[str, str]) -> None:
    """texts.md 2.3 and 2.4: 5 and 4.5 of 45 ÷ 10, 27 and 135 of 270 ÷ 20, 3 and 30 of 320 ÷ 10."""
    assert {answer: str(mistake) for answer, mistake in counts(size, per).items()} == wrong


@given(size=HALVES, per=st.sampled_from([1, 2, 4, 5, 10, 20, 50, 100]))
def test_every_wrong_count_is_read_as_that_mistake(size: Decimal, per: int) -> None:
    for answer, mistake in likely_counts(size, Decimal(per)):
        assert answer != size // per
        assert count_mistake(size, Decimal(per), answer) == mistake


def test_wrong_sums_by_hand() -> None:
    """90 + 420 + 25 = 535: the ten of tens dropped is 435, without the last number 510."""
    assert likely_sums([Decimal(90), Decimal(420), Decimal(25)]) == (
        (Decimal(435), SumSlip.NO_CARRY),
        (Decimal(510), SumSlip.LEFT_ONE_OUT),
    )
    assert likely_sums([Decimal(420), Decimal(0)]) == ()  # both come out right
    assert likely_sums([Decimal("2.5"), Decimal("1.5")]) == (
        (Decimal(3), SumSlip.NO_CARRY),
        (Decimal("2.5"), SumSlip.LEFT_ONE_OUT),
    )


@given(parts=st.lists(HALVES, min_size=1, max_size=9))
def test_no_wrong_sum_is_the_right_one(parts: list[Decimal]) -> None:
    assert sum(parts) not in dict(likely_sums(parts))
