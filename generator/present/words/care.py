"""What a lesson says about care: the same for every lesson, and what its own foods ask for."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.result import LessonResult
from generator.model.food import NOT_LOOKED_AT, Food
from generator.model.measure import Measure
from generator.present.words.families import ALLERGEN
from generator.present.words.foreign import of_library
from generator.present.words.say import Say

_BEFORE_MOVING = (
    "before_moving_1",
    "before_moving_2",
    "before_moving_3",
    "before_moving_4",
)
_OWN_PLAN = {Measure.FIBER: "care_fiber", Measure.POTASSIUM: "care_potassium"}
"""Of which some people are told how much to eat, and what is said to them."""


def care_lines(result: LessonResult, say: Say) -> tuple[str, ...]:
    """One sentence or two a line, the foods of the lesson that can choke a small child named."""
    asked_for = care_of_foods(result, say)
    return (
        say("care_educational"),
        *asked_for,
        *map(say, ("care_ask", "care_numbers", "care_food", "care_local")),
    )


def care_of_foods(result: LessonResult, say: Say) -> tuple[str, ...]:
    """What this lesson's own foods ask for, and nothing that is the same for every lesson."""
    lines = [allergen_line(result, say)] if result.holdings else []
    lines.append(say("care_young"))
    if risky := _names((food for food in _foods(result) if food.entry.can_choke), say):
        lines.append(say("care_choking", listed=say.listed(risky)))
    if result.lesson.file.cooking:
        lines.append(say("care_cooking"))
    compared = {one.stop.measure for one in result.comparisons.values()}
    lines += (say(line) for measure, line in _OWN_PLAN.items() if measure in compared)
    return tuple(lines)


def before_moving(say: Say) -> tuple[str, ...]:
    """The room check and the stop signs, before anyone moves."""
    return tuple(map(say, _BEFORE_MOVING))


def allergen_line(result: LessonResult, say: Say) -> str:
    """The major allergens the library knows of in the foods shown.

    Where it knows of none this is said: no line at all reads as if there were none.
    """
    named = {allergen for food in _foods(result) for allergen in food.entry.contains}
    listed = tuple(sorted(say(ALLERGEN.key(name)) for name in named))
    line = say("allergens", listed=say.listed(listed)) if listed else say("allergens_none")
    unseen = (food for food in _foods(result) if food.entry.allergens == NOT_LOOKED_AT)
    if names := _names(unseen, say):
        line += " " + say("allergens_not_looked_at", listed=say.listed(names))
    return line


def _foods(result: LessonResult) -> tuple[Food, ...]:
    """Every food of the library that the lesson shows, once."""
    return tuple({held.food.id: held.food for held in result.holdings if held.food}.values())


def _names(foods: Iterator[Food], say: Say) -> tuple[str, ...]:
    names = (food.name(say.language) for food in foods)
    return tuple(
        of_library(name.words) if name.foreign else say.inside(name.words) for name in names
    )
