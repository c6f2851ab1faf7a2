"""A day whose foods cannot be all that was eaten, or more than anybody eats."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight

HALF, TWICE = Fraction(1, 2), Fraction(2)
"""Shares of what a day took between which nobody asks; ours, no source. A feast and a day in bed lie between."""


@rule
def days_are_whole(result: LessonResult) -> Iterator[Problem]:
    """A question where a day gave less than half of what it took, or more than twice that.

    The page would say of it that one day like that is nothing special.
    """
    for index, stop in enumerate(result.lesson.file.stops):
        day = result.days.get(result.lesson.stop_id(index))
        if day is None or HALF <= day.balance.ratio <= TWICE:
            continue
        share = "less than half of" if day.balance.ratio < HALF else "more than twice"
        what = (
            f"the day of {day.stop.person.name} gave {day.balance.eaten:,} kcal, "
            f"{share} the {day.balance.needed:,} it took"
        )
        hint = "write everything that was eaten under `ate:`, in amounts of one day"
        place = result.lesson.places.at("stops", index, stop.kind, "ate")
        yield Problem(place, what, hint, Weight.QUESTION)
