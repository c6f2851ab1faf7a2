"""The numbers of a compare stop."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from generator.compute.result import Comparison
from generator.compute.trace.figure import Figure, Step
from generator.compute.trace.gap import count_figures, gap_figure
from generator.compute.trace.holding import holding_steps


def comparison_figures(comparison: Comparison) -> Iterator[Figure]:
    stop = comparison.stop
    for number, row in enumerate(comparison.rows, 1):
        base = f"{stop.id}.row-{number}"
        for side, held in zip(("first", "second"), row.sides, strict=True):
            yield Figure(
                f"{base}.{side}",
                held.shown.value,
                stop.measure.unit,
                held.shown.exact,
                holding_steps(held, stop.measure),
            )
        yield gap_figure(f"{base}.gap", row.gap, stop.measure)
        if row.count:
            yield from count_figures(f"{base}.count", row.gap.size, row.count, stop.measure)
    total = comparison.total
    for index, side in enumerate(("first", "second")):
        values = [row.sides[index].shown.value for row in comparison.rows]
        value = (total.first, total.second)[index]
        exact = sum((row.sides[index].shown.exact for row in comparison.rows), Fraction(0))
        yield Figure(
            f"{stop.id}.total.{side}",
            value,
            stop.measure.unit,
            exact,
            (Step("sum", " + ".join(map(str, values)) + f" = {value}"),),
        )
    yield gap_figure(f"{stop.id}.total.gap", total, stop.measure)
