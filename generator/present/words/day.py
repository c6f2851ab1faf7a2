"""A day in words: whose it is, and which way it leans."""

from __future__ import annotations

from generator.compute.day import DayBalance
from generator.model.measure import Measure
from generator.model.stops.day import Person
from generator.present.words.families import ANSWER, PERSON
from generator.present.words.say import Say


def who(person: Person, say: Say) -> str:
    """That the person is made up, by name."""
    return say(PERSON.key(person.sex), name=person.name)


def leaning(balance: DayBalance, say: Say) -> str:
    """Which way the day leans, and by how much."""
    return say(ANSWER.key(balance.lean), gap=say.quantity(balance.gap, Measure.ENERGY))
