"""How much each day of a lesson took, as its equation with every value: for the teaching notes."""

from __future__ import annotations

from generator.compute.result import Day, LessonResult
from generator.model.measure import Measure
from generator.present.words.families import LEVEL_OF_DAY, NEED
from generator.present.words.number import arithmetic
from generator.present.words.say import Say


def day_needs(result: LessonResult, say: Say) -> tuple[str, ...]:
    """One line for each day of an invented adult; equal ones once."""
    return tuple(dict.fromkeys(_need(day, say) for day in result.days.values()))


def _need(day: Day, say: Say) -> str:
    person, body = day.stop.person, day.body
    return say(
        NEED.key(person.sex),
        name=person.name,
        age=person.age,
        level=say(LEVEL_OF_DAY.key(person.activity)),
        height=say.number(body.height_cm),
        weight=say.number(body.weight_kg),
        equation=arithmetic(day.need.equation, say),
        kcal=say.quantity(day.need.kcal, Measure.ENERGY),
        needed=say.quantity(day.balance.needed, Measure.ENERGY),
    )
