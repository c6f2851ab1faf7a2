"""Where the numbers of the ledger are shown: at their own stop, and counts where they are moved."""

from __future__ import annotations

from dataclasses import dataclass

from generator.compute.changed import WhatIf
from generator.compute.figure import Figure
from generator.compute.holding import Holding
from generator.compute.result import Comparison, LessonResult, WorkedStop
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
    beside: str = ""
    """Id of the food on the other side of its row, for what one food holds."""
    change: str = ""
    """At a what-if stop its change, and what takes the place of what in which amounts."""
    asked: str = ""
    """The sum or the choice it is the answer to, as the lesson has it."""


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
            _beside(figure, comparison),
            _change(figure, worked),
            _asked(figure, result),
        )
        for figure in result.of_stop(stop)
    )
    return own + _moved(result, stop)


def _beside(figure: Figure, comparison: Comparison | None) -> str:
    if figure.kind is not FigureKind.HOLDS or figure.side is None or not comparison:
        return ""
    rows = (row for row in comparison.rows if row.id == figure.row and not figure.change)
    return next((row.sides[1 - figure.side].id for row in rows), "")


def _change(figure: Figure, worked: WorkedStop | None) -> str:
    """What tells one change from another, also where a food of it has another amount today."""
    if not isinstance(worked, WhatIf):
        return ""
    found = next((one for one in worked.changes if one.id == figure.change), None)
    if found is None:
        return ""
    new = _foods(found.new) or "nothing"
    old = f" for {_foods((worked.old(found),))}"
    return f"{found.id} {new}" + ("" if figure.kind is FigureKind.HOLDS else old)


def _foods(held: tuple[Holding, ...]) -> str:
    return " and ".join(" ".join(filter(None, (one.id, one.item.amount))) for one in held)


def _asked(figure: Figure, result: LessonResult) -> str:
    """What tells one answer from another: what is reckoned, or what is chosen among what."""
    if figure.kind is not FigureKind.ANSWER:
        return ""
    stops = zip(result.lesson.file.stops, result.lesson.ids, strict=True)
    asked = (stop.computed for stop, ids in stops if ids.stop == figure.stop)
    written, which = next(asked, None) or (None, None)
    return f"{which.holds} of {which.among} in {which.of}" if which else written or ""


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
