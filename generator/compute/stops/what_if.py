"""A what-if stop worked out: for each change the new totals and their gap, and every number of them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

from generator.compute.changed import Changed, WhatIf
from generator.compute.figure import Figure
from generator.compute.gap import Gap, total_gap
from generator.compute.holding import Holding, hold
from generator.compute.result import Comparison
from generator.compute.steps import Addition, Step, Subtraction
from generator.compute.stops.held import held_figure
from generator.compute.stops.kind import Given, WorkedKind, none_counted
from generator.model.figure import FigureKind
from generator.model.ids import StopIds
from generator.model.names import TOTAL
from generator.model.stops.what_if import Seat, WhatIfStop, seats


def _work(stop: WhatIfStop, ids: StopIds, given: Given) -> WhatIf:
    """Every change for itself, each from the comparison as it stands above."""
    comparison = given.worked[stop.compare]
    if not isinstance(comparison, Comparison):
        raise TypeError(f"{stop.compare} is no comparison, which reading should have said")
    compared = next(one for one in given.lesson.ids if one.stop == stop.compare)
    changed = []
    for name, change, foods in zip(ids.parts, stop.changes, ids.foods, strict=True):
        (seat,) = seats(compared, change)
        items = zip(change.items, foods, strict=True)
        measure = comparison.stop.measure
        new = tuple(hold(item, measure, given.library, food) for item, food in items)
        changed.append(_changed(name, comparison, seat, new))
    return WhatIf(stop, comparison, tuple(changed))


def _changed(name: str, comparison: Comparison, seat: Seat, new: tuple[Holding, ...]) -> Changed:
    row, side = seat
    gaps = [one.gap for one in comparison.rows]
    value = sum((held.shown.value for held in new), Decimal(0))
    exact = sum((held.shown.exact for held in new), Fraction(0))
    kept = comparison.rows[row].sides[1 - side].shown
    gaps[row] = (
        Gap(value, kept.value, exact - kept.exact)
        if side == 0
        else Gap(kept.value, value, kept.exact - exact)
    )
    return Changed(name, row, side, new, gaps[row], total_gap(tuple(gaps)))


def _figures(stop: str, worked: WhatIf) -> Iterator[Figure]:
    """For each change what its foods hold, the total of its side, and the gap."""
    for number, one in enumerate(worked.changes):
        for key, held in zip(("to", "and"), one.new, strict=False):
            figure = held_figure(stop, worked.row_of(one).id, held, worked.measure)
            yield replace(
                figure,
                id=f"{stop}.{one.id}.{held.id}",
                side=one.side,
                change=one.id,
                written=("changes", number, key),
            )
        yield from _of_totals(stop, worked, one)


def _of_totals(stop: str, worked: WhatIf, one: Changed) -> Iterator[Figure]:
    def figure(
        kind: FigureKind, value: Decimal, exact: Fraction, step: Step, side: int | None
    ) -> Figure:
        measure = worked.measure
        return Figure(
            id=f"{stop}.{one.id}.{kind}",
            kind=kind,
            value=value,
            measure=measure,
            unit=measure.unit,
            exact=exact,
            stop=stop,
            steps=(step,),
            row=TOTAL,
            side=side,
            foods=worked.foods_after(one, *((0, 1) if side is None else (side,))),
            change=one.id,
        )

    total, side = one.total, one.side
    parts = worked.foods_after(one, side)
    value = (total.first, total.second)[side]
    exact = sum((held.shown.exact for held in parts), Fraction(0))
    added = Addition(tuple(held.shown.value for held in parts), value)
    yield figure(FigureKind.TOTAL, value, exact, added, side)
    step = Subtraction(total, worked.measure.unit)
    yield figure(FigureKind.GAP, total.size, abs(total.exact), step, None)


KIND = WorkedKind(
    stop=WhatIfStop, after=("compare",), work=_work, figures=_figures, counted=none_counted
)
