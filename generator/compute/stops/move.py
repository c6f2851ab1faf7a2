"""A move stop worked out: a move for each row, and the minutes of the teaching notes."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from generator.compute.figure import Figure
from generator.compute.move_minutes import MoveMinutes, move_minutes
from generator.compute.result import Comparison, CountedMove, Movement, Row
from generator.compute.steps import EnergyCost, MinutesOfGap, RestingEnergy
from generator.compute.stops.kind import Given, WorkedKind, none_counted
from generator.model.figure import FigureKind, Tally
from generator.model.ids import StopIds
from generator.model.measure import Measure
from generator.model.move import Move
from generator.model.stops.move import REST, MoveStop


def _work(stop: MoveStop, _: StopIds, given: Given) -> Movement:
    """Give each row of a counted comparison its move; the counts are the comparison's own."""
    comparison = given.worked[stop.compare]
    if not isinstance(comparison, Comparison):
        raise TypeError(f"{stop.compare} is no comparison, which reading should have said")
    counts = comparison.counts.rows if comparison.counts else ()
    energy = comparison.stop.measure is Measure.ENERGY

    def minutes(move: Move, row: Row) -> MoveMinutes | None:
        return move_minutes(move, row.gap.size, given.lesson.file.grades) if energy else None

    moves, rows = given.library.moves, zip(stop.moves, comparison.rows, counts, strict=True)
    done = tuple(
        CountedMove(name, moves[name], number, row, count, minutes(moves[name], row))
        for number, (name, row, count) in enumerate(rows, 1)
        if name != REST
    )
    return Movement(stop, comparison, done)


def _figures(stop: str, movement: Movement) -> Iterator[Figure]:
    """The minutes of each move that has any."""
    for counted in movement.counts:
        minutes, energy = counted.minutes, counted.move.youth_energy
        if minutes and energy:
            yield Figure(
                id=f"{stop}.{counted.row.id}.{FigureKind.MINUTES}",
                kind=FigureKind.MINUTES,
                value=Decimal(minutes.shown),
                measure=Measure.ENERGY,
                unit=Tally.MINUTES,
                exact=minutes.minutes,
                stop=stop,
                steps=(EnergyCost(minutes, energy), RestingEnergy(minutes), MinutesOfGap(minutes)),
                row=counted.row.id,
                foods=counted.row.sides,
                move=counted.move_id,
            )


KIND = WorkedKind(
    stop=MoveStop, after=("compare",), work=_work, figures=_figures, counted=none_counted
)
