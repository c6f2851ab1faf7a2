"""The numbers of a lesson as they are published: value, unit, kind, and what each is of in words."""

from __future__ import annotations

from generator.compute.changed import WhatIf
from generator.compute.figure import Figure
from generator.compute.result import Comparison, LessonResult
from generator.model.figure import FigureKind
from generator.model.names import TOTAL
from generator.model.published import PublishedNumber
from generator.present.stops.in_lesson import stop_names
from generator.present.words.amounts import food_name, portion
from generator.present.words.prose import plain
from generator.present.words.say import Say
from generator.present.words.what_if import change_words


def published_numbers(result: LessonResult, say: Say) -> dict[str, PublishedNumber]:
    """Every number of the ledger, in its order."""
    names = stop_names(result, say)
    return {
        one.id: PublishedNumber(
            one.value, one.unit.value, one.kind, str(plain(_of(one, result, say, names[one.stop])))
        )
        for one in result.figures
    }


def _of(figure: Figure, result: LessonResult, say: Say, heading: str) -> str:
    """``Apple, 1 medium``; ``Home lunch, Kiosk lunch: all rows``; of an answer its stop's heading."""
    if figure.kind is FigureKind.HOLDS:
        return portion(figure.foods[0], say)
    if day := result.days.get(figure.stop):
        return day.stop.person.name if figure.kind is not FigureKind.ANSWER else heading
    if figure.change:
        return _of_change(figure, result, say)
    row, comparison = figure.row, _comparison(figure, result)
    if comparison is None or not row:
        return heading
    if figure.kind is FigureKind.TOTAL and figure.side is not None:
        return comparison.stop.sides[figure.side]
    if row == TOTAL:
        return say("state_all_rows", sides=", ".join(comparison.stop.sides))
    return _foods(comparison, row, say) or heading


def _of_change(figure: Figure, result: LessonResult, say: Say) -> str:
    """Of a what-if stop: the change, after the side whose total it is."""
    worked = result.of(WhatIf)[figure.stop]
    changed = next(one for one in worked.changes if one.id == figure.change)
    change = change_words(worked, changed, say)
    if figure.kind is not FigureKind.TOTAL:
        return change
    return f"{worked.comparison.stop.sides[changed.side]}: {change}"


def _comparison(figure: Figure, result: LessonResult) -> Comparison | None:
    """The comparison that a number belongs to; of minutes the one whose gaps are moved."""
    if movement := result.movements.get(figure.stop):
        return movement.comparison
    return result.comparisons.get(figure.stop)


def _foods(comparison: Comparison, row: str, say: Say) -> str:
    """The foods of a row, beside each other."""
    sides = next((one.sides for one in comparison.rows if one.id == row), ())
    return ", ".join(food_name(held, say) for held in sides)
