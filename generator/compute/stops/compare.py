"""A compare stop worked out: what each side holds, and the gaps."""

from __future__ import annotations

from decimal import Decimal

from generator.compute.count import count_moves
from generator.compute.gap import Gap, total_gap
from generator.compute.holding import hold
from generator.compute.result import Comparison, Row
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.stops.compare import CompareStop, Item


def comparison(
    stop: CompareStop, names: tuple[str, ...], per: Decimal | None, library: Library
) -> Comparison:
    """The rows in order, and their total.

    Args:
        stop: what is compared.
        names: of its rows.
        per: how much of a gap is one count, in the measure's unit; nothing where none is counted.
        library: brings the foods.
    """
    rows = tuple(
        _row(name, row.foods, stop.measure, per, library)
        for name, row in zip(names, stop.rows, strict=True)
    )
    total = total_gap(tuple(row.gap for row in rows))
    return Comparison(stop, rows, total, count_moves(total.size, per) if per else None)


def _row(
    name: str, items: tuple[Item, Item], measure: Measure, per: Decimal | None, library: Library
) -> Row:
    first, second = (hold(item, measure, library) for item in items)
    gap = Gap(first.shown.value, second.shown.value, first.shown.exact - second.shown.exact)
    return Row(name, (first, second), gap, count_moves(gap.size, per) if per else None)
