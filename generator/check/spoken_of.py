"""What a stop speaks of: its own numbers, else those of the stop it is most likely about."""

from __future__ import annotations

from generator.compute.result import Comparison, Day, LessonResult
from generator.model.measure import Measure


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
    told = [
        worked.comparison_told if (worked := result.worked.get(ids.stop)) else None
        for ids in result.lesson.ids
    ]
    for found in (*reversed(told[: index + 1]), *told[index + 1 :]):
        if found and measure in {None, found.stop.measure}:
            return found
    return None
