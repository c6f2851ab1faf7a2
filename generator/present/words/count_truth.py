"""Each move's count beside the real computation: for the teaching notes, never for a learner."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction

from generator.compute.move_minutes import MoveMinutes
from generator.compute.result import CountedMove, LessonResult
from generator.compute.rounding import whole
from generator.model.measure import Measure
from generator.present.views.notes import CountTruthView
from generator.present.words.families import MEASURE
from generator.present.words.foreign import cited
from generator.present.words.move_text import move_text
from generator.present.words.number import arithmetic
from generator.present.words.say import Say, as_decimal


def count_truths(result: LessonResult, say: Say) -> tuple[CountTruthView, ...]:
    """One line for each move of an energy gap; a gap in grams or milligrams has no minutes."""
    return tuple(_truth(counted, say) for counted in _counted(result))


def count_says(result: LessonResult, say: Say) -> str:
    """What the count is and what it is not, wherever moves are counted; empty where none are."""
    return say("notes_count_says") if result.movements else ""


def count_why(result: LessonResult, say: Say) -> tuple[str, ...]:
    """Why the count is no energy, for each measure whose gaps are counted; nothing where none is.

    It argues and doses nobody: a count is a division; where minutes are computed, they have nothing
    to do with it; where a gap is in grams or milligrams, no minutes belong to it.
    """
    if not result.movements:
        return ()
    minutes = any(counted.minutes for counted in _counted(result))
    real = (say("notes_count_real"), say("notes_count_point")) if minutes else ()
    return (say("notes_count_divided"), *dict.fromkeys(_without_minutes(result, say)), *real)


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
            yield from movement.moved


def _without_minutes(result: LessonResult, say: Say) -> Iterator[str]:
    for movement in result.movements.values():
        measure = movement.comparison.stop.measure
        if measure is not Measure.ENERGY:
            name = say(MEASURE.key(measure))
            yield say("notes_count_no_energy", measure=name, unit=measure.unit)


def _truth(counted: CountedMove, say: Say) -> CountTruthView:
    name = move_text(counted.move, say).name
    found = counted.minutes
    if found is None:
        return CountTruthView(_takes(counted, name, say), say("count_truth_none", move=name), "")
    says = say(
        "count_truth_minutes",
        n=found.shown,
        minutes=say.number(found.shown),
        gap=say.quantity(found.gap_kcal, Measure.ENERGY),
        age=found.child.age_years,
    )
    formula = say(
        "count_truth_computed",
        formula=_formula(found, say),
        activity=cited(found.activity, say.language),
        code=found.code,
    )
    return CountTruthView(_takes(counted, name, say), says, formula)


def _takes(counted: CountedMove, name: str, say: Say) -> str:
    """How long the count itself takes at the move's easy pace."""
    times = counted.count.whole
    minutes = whole(Fraction(times, counted.move.pace))
    time = (
        say("count_truth_minutes_of_count", n=minutes, minutes=say.number(minutes))
        if times >= counted.move.pace
        else say("count_truth_under_a_minute")
    )
    return say("count_truth_takes", move=name, n=times, count=say.number(times), time=time)


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
