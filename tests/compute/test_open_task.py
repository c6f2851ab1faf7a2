"""Two foods whose gap is a round number: worked out by hand. Common practice, no source."""

from __future__ import annotations

from decimal import Decimal

from generator.compute.open_task import OpenTask, open_task
from tests.worked import worked

HEAD = "- compare: {id: x, measure: energy, sides: [A, B], rows: [%s]}\n"


def row(first: int, second: int) -> str:
    foods = ", ".join(
        f"{{name: F{value}, value: {value}, source: label}}" for value in (first, second)
    )
    return f"{{id: r{first}-{second}, foods: [{foods}]}}"


def task(*rows: str) -> OpenTask | None:
    return open_task(worked(HEAD % ", ".join(rows)).comparisons["x"])


def test_the_roundest_gap_of_two_rows_and_the_larger_food_first() -> None:
    """Across the rows: 410−150 = 260, 410−210 = 200, 90 to 150 = 60, 90 to 210 = 120."""
    found = task(row(410, 90), row(150, 210))
    assert found is not None
    assert found.gap == Decimal(200)
    assert [held.shown.value for held in found.pair] == [410, 210]


def test_a_gap_that_a_row_has_is_no_task() -> None:
    """410−210 = 200 is the gap of the third row, so 120 it is; 260 stands in no hundred either."""
    found = task(row(410, 90), row(150, 210), row(400, 200))
    assert found is not None
    assert found.gap != 200


def test_a_food_that_holds_nothing_is_left_out() -> None:
    """100 − 0 would be the roundest."""
    found = task(row(100, 70), row(0, 60))
    assert found is not None
    assert found.gap in (10, 40)
    assert all(held.shown.value for held in found.pair)


def test_one_row_leaves_nothing_to_choose() -> None:
    assert task(row(410, 90)) is None
