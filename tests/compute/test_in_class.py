"""What a class needs of a lesson, reckoned by hand. Common practice, no source."""

from __future__ import annotations

import pytest

from generator.compute.in_class import CLASS, GROUPS, blocks_for_a_group, first_half
from tests.worked import worked

ROW = "- compare: {id: x, measure: energy, sides: [A, B], rows: [%s]}\n"


def own(first: str, second: str) -> str:
    return (
        f"[{{name: P, value: {first}, source: label}}, {{name: Q, value: {second}, source: label}}]"
    )


def test_blocks_lay_both_numbers_of_any_row() -> None:
    """410 and 90 are 4 hundreds and 10 tens; 250 and 230 are 4 hundreds and 8 tens."""
    again = "{id: again, foods: " + own("250", "230") + "}"
    blocks = blocks_for_a_group(worked(ROW % ", ".join([own("410", "90"), again])))
    assert blocks is not None
    assert (blocks.hundreds, blocks.tens, blocks.ones) == (4, 10, 0)


def test_a_half_is_cut_from_a_one() -> None:
    """2.5 g and 1 g of fiber: 3 ones, and one more to cut."""
    row = (ROW % own("3", "1")).replace("energy", "saturated_fat").replace("value: 3", "value: 2.5")
    blocks = blocks_for_a_group(worked(row))
    assert blocks is not None
    assert (blocks.tens, blocks.ones) == (0, 4)


def test_a_lesson_without_rows_needs_no_blocks() -> None:
    assert blocks_for_a_group(worked("- talk: {prompt: What next?}\n")) is None


@pytest.mark.parametrize(
    ("minutes", "first"),
    [((1, 1, 8, 5, 2, 1), 3), ((3, 3), 1), ((9, 1, 1), 1), ((4,), 0), ((), 0)],
)
def test_two_halves_meet_where_they_are_most_even(minutes: tuple[int, ...], first: int) -> None:
    assert first_half(minutes) == first


def test_twenty_five_are_eleven_pairs_and_three() -> None:
    assert (GROUPS - 1) * 2 + 3 == CLASS
