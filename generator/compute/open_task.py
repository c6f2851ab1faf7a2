"""An open task for who is done early: two foods of the lesson whose gap is a given round number."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from itertools import combinations

from generator.compute.holding import Holding
from generator.compute.result import Comparison

_ROUND = (100, 50, 10, 5, 2)
"""The rounder a gap, the better it can be looked for."""


@dataclass(frozen=True, slots=True)
class OpenTask:
    """Which gap to look for, and one pair that has it."""

    gap: Decimal
    """Above 0, and no row of the lesson has it."""
    pair: tuple[Holding, Holding]
    """What holds more first."""


def open_task(comparison: Comparison) -> OpenTask | None:
    """The roundest gap that two foods of different rows have and no row has; nothing where there is none.

    Of gaps that are as round, the largest; a food that holds nothing leaves nothing to subtract.
    Common practice, no source.
    """
    taken = {row.gap.size for row in comparison.rows}
    found = [
        OpenTask(abs(one.shown.value - other.shown.value), _larger_first(one, other))
        for row, beside in combinations(comparison.rows, 2)
        for one in row.sides
        for other in beside.sides
        if one.shown.value and other.shown.value
    ]
    fit = [task for task in found if task.gap and task.gap not in taken]
    return max(fit, key=lambda task: (_roundness(task.gap), task.gap), default=None)


def _roundness(gap: Decimal) -> int:
    return next((size for size in _ROUND if not gap % size), 0)


def _larger_first(one: Holding, other: Holding) -> tuple[Holding, Holding]:
    return (one, other) if one.shown.value > other.shown.value else (other, one)
