"""Gaps and counts, as the subtraction and the division that make them."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction

from generator.compute.count import Count
from generator.compute.gap import Gap
from generator.compute.trace.figure import Figure, Step
from generator.compute.trace.plain import plain
from generator.model.measure import Measure


def gap_figure(name: str, gap: Gap, measure: Measure) -> Figure:
    unit = measure.unit
    unrounded = f"before rounding the gap is {plain(abs(gap.exact))} {unit}"
    step = Step(
        "subtraction",
        f"{gap.larger} − {gap.smaller} = {gap.size} {unit}, between shown values; {unrounded}",
    )
    return Figure(name, gap.size, unit, abs(gap.exact), (step,))


def count_figures(name: str, gap: Decimal, count: Count, measure: Measure) -> Iterator[Figure]:
    left = f", {count.left_over} {measure.unit} left over"
    step = Step("division", f"{gap} ÷ {count.per} = {count.whole}{left if count.left_over else ''}")
    yield Figure(name, Decimal(count.whole), "times", Fraction(count.whole), (step,))
    yield Figure(
        name.removesuffix("count") + "left-over",
        count.left_over,
        measure.unit,
        Fraction(count.left_over),
        (step,),
    )
