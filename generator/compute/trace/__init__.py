"""Where every shown number of a lesson comes from, step by step."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.result import LessonResult
from generator.compute.trace.comparison import comparison_figures
from generator.compute.trace.day import day_figures
from generator.compute.trace.figure import Figure, Step
from generator.compute.trace.movement import movement_figures

__all__ = ["Figure", "Step", "trace"]


def trace(result: LessonResult) -> tuple[Figure, ...]:
    """Every number a page of the lesson shows, in the order of the stops."""
    lesson = result.lesson
    ids = map(lesson.stop_id, range(len(lesson.file.stops)))
    return tuple(figure for stop_id in ids for figure in _of_stop(stop_id, result))


def _of_stop(stop_id: str, result: LessonResult) -> Iterator[Figure]:
    if comparison := result.comparisons.get(stop_id):
        yield from comparison_figures(comparison)
    if movement := result.movements.get(stop_id):
        yield from movement_figures(stop_id, movement, result)
    if day := result.days.get(stop_id):
        yield from day_figures(stop_id, day)
