"""Where the numbers of the ledger are shown: at their own stop, and counts where they are moved."""

from __future__ import annotations

from dataclasses import dataclass

from generator.compute.figure import Figure
from generator.compute.result import LessonResult
from generator.model.figure import FigureKind

_COUNTED = {FigureKind.COUNT, FigureKind.LEFT_OVER}


@dataclass(frozen=True, slots=True)
class Showing:
    """A number at a stop that shows it."""

    figure: Figure
    """The number of the ledger."""
    stop: str
    """Id of that stop."""
    move: str = ""
    """Id of the move that is done so often, at a move stop."""
    person: str = ""
    """Whose day it is, at a day stop."""
    side: str = ""
    """Name of the side it belongs to, the same in every language."""


def showings(result: LessonResult) -> tuple[Showing, ...]:
    """Every number at every stop that shows it, in the order of the lesson."""
    return tuple(one for ids in result.lesson.ids for one in shown_at(result, ids.stop))


def shown_at(result: LessonResult, stop: str) -> tuple[Showing, ...]:
    """The numbers that a stop shows: its own, and the counts of the rows that it moves."""
    worked, day = result.worked.get(stop), result.days.get(stop)
    comparison = worked.comparison_told if worked else None
    sides = comparison.side_ids if comparison else ("", "")
    person = day.stop.person.name if day else ""
    own = tuple(
        Showing(
            figure,
            stop,
            figure.move,
            person,
            "" if figure.side is None else sides[figure.side],
        )
        for figure in result.of_stop(stop)
    )
    return own + _moved(result, stop)


def _moved(result: LessonResult, stop: str) -> tuple[Showing, ...]:
    movement = result.movements.get(stop)
    if movement is None:
        return ()
    moves = {counted.row.id: counted.move_id for counted in movement.counts}
    return tuple(
        Showing(figure, stop, moves[figure.row])
        for figure in result.of_stop(movement.comparison.stop.id)
        if figure.kind in _COUNTED and figure.row in moves
    )
