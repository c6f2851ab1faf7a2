"""Each move's count beside the real computation: for the teaching notes, never for a learner."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction

from generator.compute.move_minutes import MoveMinutes
from generator.compute.result import CountedMove, LessonResult
from generator.model.measure import Measure
from generator.present.views.notes import CountTruthView
from generator.present.words.move_text import move_text
from generator.present.words.number import arithmetic
from generator.present.words.say import Say, as_decimal


def count_truths(result: LessonResult, say: Say) -> tuple[CountTruthView, ...]:
    """One line for each move of an energy gap; a gap in grams or milligrams has no minutes."""
    return tuple(_truth(counted, say) for counted in _counted(result))


def count_says(result: LessonResult, say: Say) -> tuple[str, ...]:
    """What the count is and what it is not, wherever moves are counted; nothing where none are.

    Then that the computation below is for adults alone, or why there is none.
    """
    if not result.movements:
        return ()
    first = say("notes_count_says")
    energy = tuple(_counted(result))
    if not energy:
        return first, say("notes_count_no_energy")
    minutes = any(counted.minutes for counted in energy)
    return (first, say("notes_count_real")) if minutes else (first,)


def count_sources(result: LessonResult, say: Say) -> str:
    """Where the minutes come from, with every value of the typical child; empty without minutes."""
    found = next((counted.minutes for counted in _counted(result) if counted.minutes), None)
    if found is None:
        return ""
    boy, girl = found.child.weights_kg
    return say(
        "notes_count_from",
        age=found.child.age_years,
        boy=say.number(boy),
        girl=say.number(girl),
        equation=arithmetic(found.child.equation, say),
        resting=say.quantity(_resting(found), Measure.ENERGY),
    )


def _counted(result: LessonResult) -> Iterator[CountedMove]:
    for movement in result.movements.values():
        if movement.comparison.stop.measure is Measure.ENERGY:
            yield from movement.counts


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
            formula=_formula(found, say),
            activity=found.activity,
            code=found.code,
        )
    return CountTruthView(name, say.number(counted.count.whole), says)


def _formula(found: MoveMinutes, say: Say) -> str:
    """The computation with its numbers, and their units behind it: no `kcal ÷` stands on any page."""
    return say(
        "count_truth_formula",
        gap=say.number(found.gap_kcal),
        mety=say.number(found.mety),
        resting=say.number(_resting(found)),
        day=say.number(1440),
    )


def _resting(found: MoveMinutes) -> Decimal:
    return as_decimal(Fraction(found.child.resting), 2)
