"""The minutes of a lesson shared out among its stops: a rule of ours, common practice, no source."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.minutes import in_whole_minutes, parts_of_time

MINUTES = st.integers(1, 180)
STOPS = st.lists(st.tuples(st.integers(0, 600), st.integers(0, 9)), min_size=1, max_size=20)


def test_a_stop_has_its_part_of_the_film_and_of_the_rest_as_there_is_to_do() -> None:
    """By hand: 10 minutes, a film of 1 + 1; of the 8 others 2 in 8 and 6 in 8."""
    film = [Fraction(1), Fraction(0), Fraction(1)]
    assert parts_of_time(10, film, [0, 2, 6]) == (1, 2, 7)


def test_a_film_longer_than_the_lesson_is_drawn_together() -> None:
    assert parts_of_time(3, [Fraction(4), Fraction(2)], [0, 5]) == (2, 1)


def test_without_a_film_and_without_work_all_have_the_same() -> None:
    assert parts_of_time(9, [Fraction(0)] * 3, [0, 0, 0]) == (3, 3, 3)


@pytest.mark.parametrize(
    ("parts", "whole"),
    [
        ([Fraction(1, 5), Fraction(9, 5), Fraction(8)], (1, 1, 8)),  # nobody has none
        ([Fraction(1, 2), Fraction(1, 2)], (1, 0)),  # not enough for all: the earlier of two alike
        ([Fraction(7, 2), Fraction(7, 2)], (4, 3)),
        ([Fraction(6)], (6,)),
    ],
)
def test_whole_minutes_by_hand(parts: list[Fraction], whole: tuple[int, ...]) -> None:
    assert in_whole_minutes(parts) == whole


@given(total=MINUTES, stops=STOPS)
def test_they_always_add_up_and_nobody_is_left_out(
    total: int, stops: list[tuple[int, int]]
) -> None:
    film = [Fraction(seconds, 60) for seconds, _ in stops]
    parts = parts_of_time(total, film, [work for _, work in stops])
    assert sum(parts) == total
    whole = in_whole_minutes(parts)
    assert sum(whole) == total
    assert min(whole) >= (total >= len(stops))
