"""What a stop speaks of: its own numbers, else those of the stop it is most likely about."""

from __future__ import annotations

from generator.compute.result import Comparison, Day, LessonResult
from generator.model.measure import Measure
from generator.model.stops.compare import CompareStop
from generator.model.stops.move import MoveStop


def spoken_of(
    result: LessonResult, index: int, measure: Measure | None = None
) -> Comparison | Day | None:
    """The day of its own stop, else a comparison: its own, the last one above, else the next below.

    Args:
        result: the lesson with its numbers.
        index: which stop, from 0.
        measure: where one is named, only what is of that measure is meant.
    """
    day = result.days.get(result.lesson.stop_id(index))
    if day and measure in {None, Measure.ENERGY}:
        return day
    stops = result.lesson.file.stops
    for at in (*range(index, -1, -1), *range(index + 1, len(stops))):
        stop = stops[at]
        if isinstance(stop, CompareStop | MoveStop):
            found = result.comparisons[stop.compare if isinstance(stop, MoveStop) else stop.id]
            if measure in {None, found.stop.measure}:
                return found
    return None
