"""Each move's count beside the real computation: for the teaching notes, never for a learner."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from generator.compute.result import CountedMove, LessonResult
from generator.model.measure import Measure
from generator.present.views.notes import CountTruthView
from generator.present.words.move_text import move_text
from generator.present.words.say import Say, as_decimal


def count_truths(result: LessonResult, say: Say) -> tuple[CountTruthView, ...]:
    """One line for each move of an energy gap; a gap in grams or milligrams has no minutes."""
    return tuple(
        _truth(counted, say)
        for movement in result.movements.values()
        if movement.comparison.stop.measure is Measure.ENERGY
        for counted in movement.counts
    )


def _truth(counted: CountedMove, say: Say) -> CountTruthView:
    name = move_text(counted.move, say).name
    found = counted.minutes
    if found is None:
        says = say("count_truth_none", move=name)
    else:
        says = say(
            "count_truth_minutes",
            move=name,
            n=found.shown,
            minutes=say.number(found.shown),
            age=found.child.age_years,
            formula=found.formula.replace(".", _point(say)),
        )
    return CountTruthView(name, say.number(counted.count.whole), says)


def _point(say: Say) -> str:
    """The decimal sign of the language."""
    return say.number(as_decimal(Fraction(1, 2), 1) + Decimal(0))[1]
