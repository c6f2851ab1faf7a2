"""A row that sets a food against itself."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight


@rule
def foods_differ(result: LessonResult) -> Iterator[Problem]:
    """A question where both sides of a row hold one food in one amount; half of something is another amount."""
    for index, stop in enumerate(result.lesson.file.stops):
        comparison = result.comparisons.get(result.lesson.stop_id(index))
        for number, row in enumerate(comparison.rows if comparison else ()):
            first, second = row.sides
            if (first.id, first.serving, first.shown) == (second.id, second.serving, second.shown):
                place = result.lesson.places.at("stops", index, stop.kind, "rows", number)
                what = f"both sides of row {number + 1} hold the same food in the same amount"
                hint = "choose another food or another amount for one of them"
                yield Problem(place, what, hint, Weight.QUESTION)
