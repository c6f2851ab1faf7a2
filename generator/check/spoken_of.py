"""What a stop speaks of: its own numbers, else those of the stop it is most likely about."""

from __future__ import annotations

from generator.compute.result import Compared, Comparison, LessonResult
from generator.model.measure import Measure


def spoken_of(
    result: LessonResult, index: int, measure: Measure | None = None
) -> Comparison | Compared | None:
    """What its own stop compares, else a comparison: its own, the last one above, else the next below.

    Args:
        result: the lesson with its numbers.
        index: which stop, from 0.
        measure: where one is named, only what is of that measure is meant.
    """
    stops = [result.worked.get(ids.stop) for ids in result.lesson.ids]
    own = stops[index]
    if own and own.compared and measure in {None, own.compared.measure}:
        return own.compared
    told = [stop.comparison_told if stop else None for stop in stops]
    for found in (*reversed(told[: index + 1]), *told[index + 1 :]):
        if found and measure in {None, found.stop.measure}:
            return found
    return None
