"""What hangs under the line: a thread for each row of a lesson, as long as its gap."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.result import LessonResult
from generator.model.measure import Measure


@dataclass(frozen=True, slots=True)
class Hung:
    """One row's gap."""

    stop: str
    """Id of its comparison."""
    gap: Decimal
    """In the measure's unit."""
    share: Fraction
    """Of the longest gap in the same measure, from 0 to 1."""
    side: int | None
    """Which side holds more: 0, 1, or neither."""
    holder: str
    """What that side is called; empty where neither holds more."""


def hung(result: LessonResult) -> tuple[Hung, ...]:
    """Every row of every comparison, in order; none where a lesson compares nothing.

    All rows of a lesson share one scale. Only where two comparisons are of different measures has
    each measure its own, for a gap in grams is neither longer nor shorter than one in kilocalories.
    """
    return tuple(_hung(result, _longest(result)))


def _hung(result: LessonResult, longest: dict[Measure, Decimal]) -> Iterator[Hung]:
    for one in result.comparisons.values():
        most = longest[one.stop.measure]
        for row in one.rows:
            gap = row.gap
            yield Hung(
                stop=one.stop.id,
                gap=gap.size,
                share=Fraction(gap.size) / Fraction(most) if most else Fraction(0),
                side=gap.holder,
                holder="" if gap.holder is None else one.stop.sides[gap.holder],
            )


def _longest(result: LessonResult) -> dict[Measure, Decimal]:
    """By measure, the longest gap of the lesson."""
    found: dict[Measure, Decimal] = {}
    for one in result.comparisons.values():
        sizes = (row.gap.size for row in one.rows)
        found[one.stop.measure] = max(found.get(one.stop.measure, Decimal(0)), *sizes)
    return found
