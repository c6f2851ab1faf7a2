"""The numbers of a move stop, and the minutes of the teaching notes."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from generator.compute.move_minutes import MoveMinutes, move_minutes
from generator.compute.result import LessonResult, Movement
from generator.compute.rounding import to_places
from generator.compute.trace.figure import Figure, Step
from generator.compute.trace.gap import count_figures
from generator.model.measure import Measure
from generator.model.move import Move


def movement_figures(stop_id: str, movement: Movement, result: LessonResult) -> Iterator[Figure]:
    measure = movement.comparison.stop.measure
    for number, counted in enumerate(movement.counts, 1):
        base = f"{stop_id}.card-{number}"
        yield from count_figures(f"{base}.count", counted.row.gap.size, counted.count, measure)
        if measure is Measure.ENERGY:
            gap, grades = counted.row.gap.size, result.lesson.file.grades
            minutes = move_minutes(counted.move, gap, grades)
            if minutes:
                yield _minutes(f"{base}.minutes", minutes, counted.move)


def _minutes(name: str, found: MoveMinutes, move: Move) -> Figure:
    energy = move.youth_energy
    source = f"{energy.source}, {energy.code}, status {energy.status}" if energy else ""
    child = found.child
    steps = (
        Step(
            "record", f"{found.activity}: {found.mety} METy at {child.age_years} years ({source})"
        ),
        Step(
            "resting energy",
            f"mean of a boy of {child.weights_kg[0]} kg and a girl of {child.weights_kg[1]} kg "
            f"(CDC 2000 medians), Schofield 1985: {child.resting} kcal a day",
        ),
        Step(
            "minutes", f"{found.formula} = {to_places(found.minutes, 1)}; for teaching notes only"
        ),
    )
    return Figure(name, Decimal(found.shown), "minutes", found.minutes, steps)
