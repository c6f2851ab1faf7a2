"""How long words take to say."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.pace import seconds_to_say
from generator.model.grades import GradeBand
from generator.model.pace import PACES, UNHURRIED


@pytest.mark.parametrize(
    ("words", "pace", "seconds"),
    [(0, 130, 0), (1, 130, 1), (130, 130, 60), (131, 130, 61), (80, 120, 40), (23, 130, 11)],
)
def test_small_cases(words: int, pace: int, seconds: int) -> None:
    """Words × 60 ÷ pace by hand: 23 × 60 ÷ 130 = 10.6, and a part of a second is a second."""
    assert seconds_to_say(words, pace) == seconds


@given(st.integers(0, 5_000), st.integers(60, 240))
def test_the_time_is_enough_and_not_a_second_more(words: int, pace: int) -> None:
    seconds = seconds_to_say(words, pace)
    assert seconds * pace >= words * 60
    assert (seconds - 1) * pace < words * 60 or seconds == 0


@pytest.mark.parametrize(
    ("band", "slowest", "fastest"),
    [(GradeBand.K_2, 120, 130), (GradeBand.G3_5, 128, 135), (GradeBand.G6_8, 135, 140)],
)
def test_each_band_is_spoken_to_as_children_can_follow(
    band: GradeBand, slowest: int, fastest: int
) -> None:
    """Words a minute as audiologists quote them, 2013 (references.md 6.3, status S).

    3 to 5 years 120 to 124, 5 to 7 years 128 to 130, grades 5 and 6 about 135, middle school 135 to 140.
    """
    assert slowest <= PACES[band].spoken <= fastest
    assert PACES[band].spoken >= UNHURRIED
