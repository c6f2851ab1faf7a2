"""A day stop worked out: what the day gave and what it took."""

from __future__ import annotations

from generator.compute.day import day_balance
from generator.compute.energy_needs import energy_need
from generator.compute.holding import hold
from generator.compute.reference_bodies import REFERENCE_ADULTS
from generator.compute.result import Day
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.stops.day import DayStop


def day(stop: DayStop, library: Library) -> Day:
    """The foods in the order of the day, and both sides of it in kcal."""
    person = stop.person
    eaten = tuple(hold(item, Measure.ENERGY, library) for item in stop.ate)
    body = REFERENCE_ADULTS[person.sex]
    need = energy_need(person.sex, person.age, body, person.activity)
    balance = day_balance((held.shown.value for held in eaten), need.kcal)
    return Day(stop, eaten, body, need, balance)
