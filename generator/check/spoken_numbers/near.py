"""Which numbers of the ledger may be spoken of at a stop, and what each is called."""

from __future__ import annotations

from generator.compute.figure import Figure
from generator.compute.result import LessonResult
from generator.model.figure import FigureKind, Tally
from generator.model.ids import StopIds
from generator.model.names import TOTAL

_UNSPOKEN = {FigureKind.MINUTES}
"""In the teaching notes alone."""


def near(result: LessonResult, index: int) -> tuple[Figure, ...]:
    """Numbers of the stop and of those above it; where there are none, of the next below that has some."""
    found = [
        tuple(one for one in result.of_stop(ids.stop) if one.kind not in _UNSPOKEN)
        for ids in result.lesson.ids
    ]
    above = tuple(figure for at in range(index, -1, -1) for figure in found[at])
    return above or next((figures for figures in found[index + 1 :] if figures), ())


def shown(figure: Figure) -> str:
    """A number with its unit; a count has none."""
    return f"{figure.value:,}" + (f" {figure.unit}" if figure.unit is not Tally.TIMES else "")


def belongs_to(figure: Figure, result: LessonResult) -> str:
    """Whose a number is: ``that of “Apple pie”``, ``the gap of row 2``."""
    called = called_in(figure, result)
    return f"that of “{called}”" if figure.kind is FigureKind.HOLDS else called


def called_in(figure: Figure, result: LessonResult) -> str:
    """What a number is: ``Apple pie``, ``the gap of row 2``."""
    worked, day = result.worked.get(figure.stop), result.days.get(figure.stop)
    comparison = worked.comparison_told if worked else None
    person = day.stop.person.name if day else ""
    plain = {
        FigureKind.HOLDS: figure.foods[0].name(result.lesson.language).words
        if figure.foods
        else "",
        FigureKind.TOTAL: f"the total of {comparison.stop.sides[figure.side or 0]}{_with(figure, result)}"
        if comparison
        else "",
        FigureKind.ONE_MOVE_PER: "what one count stands for",
        FigureKind.EATEN: f"what {person} ate",
        FigureKind.NEEDED: "what the day needs",
        FigureKind.ANSWER: "the answer",
        FigureKind.ESTIMATE: "a sensible estimate",
    }
    if figure.kind in plain:
        return plain[figure.kind]
    kinds = {FigureKind.GAP: "the gap", FigureKind.COUNT: "the count"}
    return f"{kinds.get(figure.kind, 'what is left over')} of {_row(figure, result)}"


def _row(figure: Figure, result: LessonResult) -> str:
    """The row as a page counts it."""
    if figure.row == TOTAL:
        return f"the totals{_with(figure, result)}"
    ids = _ids(figure, result)
    return f"row {ids.parts.index(figure.row) + 1}" if figure.row else "the day"


def _with(figure: Figure, result: LessonResult) -> str:
    """The change that a number follows from, as a page counts it."""
    change = figure.change
    return f" with change {_ids(figure, result).parts.index(change) + 1}" if change else ""


def _ids(figure: Figure, result: LessonResult) -> StopIds:
    return next(ids for ids in result.lesson.ids if ids.stop == figure.stop)
