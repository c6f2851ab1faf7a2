"""The ledger: the one list of every number of a lesson.

Trace, spoken numbers, claims, recorded figures, corrections and checkable answers read it from
``LessonResult.figures``; nobody else lists a lesson's numbers.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from generator.compute.figure import Figure
from generator.compute.result import Comparison, Day, Movement
from generator.compute.stops import compare, day, move
from generator.model.lesson import Lesson


def ledger(
    lesson: Lesson,
    comparisons: Mapping[str, Comparison],
    movements: Mapping[str, Movement],
    days: Mapping[str, Day],
) -> tuple[Figure, ...]:
    """Every number of a lesson that is worked out, in the order of its stops."""

    def of_stop(name: str) -> Iterator[Figure]:
        if comparison := comparisons.get(name):
            yield from compare.figures(comparison)
        if movement := movements.get(name):
            yield from move.figures(name, movement)
        if one := days.get(name):
            yield from day.figures(name, one)

    return tuple(figure for ids in lesson.ids for figure in of_stop(ids.stop))
