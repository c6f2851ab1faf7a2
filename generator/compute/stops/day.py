"""A day stop worked out: what a day gave and what it took."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

from generator.compute.counted import AnswerKind, CountedAnswer
from generator.compute.day import day_balance
from generator.compute.energy_needs import energy_need
from generator.compute.figure import Figure
from generator.compute.holding import hold
from generator.compute.reference_bodies import REFERENCE_ADULTS
from generator.compute.result import Day
from generator.compute.steps import (
    Addition,
    Balance,
    Leaning,
    NeedEquation,
    NeedRounding,
    ReferenceBody,
    Step,
)
from generator.compute.stops.held import held_figure
from generator.compute.stops.kind import Given, WorkedKind
from generator.model.figure import FigureKind
from generator.model.ids import StopIds
from generator.model.measure import Measure
from generator.model.stops.compare import Help
from generator.model.stops.day import DayStop


def _work(stop: DayStop, ids: StopIds, given: Given) -> Day:
    person = stop.person
    eaten = tuple(
        hold(item, Measure.ENERGY, given.library, name)
        for item, (name,) in zip(stop.ate, ids.foods, strict=True)
    )
    body = REFERENCE_ADULTS[person.sex]
    need = energy_need(person.sex, person.age, body, person.activity)
    balance = day_balance((held.shown.value for held in eaten), need.kcal)
    return Day(stop, eaten, ids.parts, body, need, balance)


def _figures(stop: str, day: Day) -> Iterator[Figure]:
    """The foods in the order of the day, then both sums and what lies between them."""
    for number, (name, held) in enumerate(zip(day.food_ids, day.eaten, strict=True)):
        yield replace(held_figure(stop, name, held, Measure.ENERGY), written=("ate", number))
    shown = [held.shown for held in day.eaten]
    balance, person = day.balance, day.stop.person

    def figure(kind: FigureKind, value: Decimal, exact: Fraction, *steps: Step) -> Figure:
        foods = () if kind is FigureKind.NEEDED else day.eaten
        energy = Measure.ENERGY
        return Figure(
            f"{stop}.{kind}", kind, value, energy, energy.unit, exact, stop, steps, foods=foods
        )

    eaten, needed = sum((one.exact for one in shown), Fraction(0)), Fraction(day.need.kcal)
    yield figure(
        FigureKind.EATEN,
        balance.eaten,
        eaten,
        Addition(tuple(one.value for one in shown), balance.eaten),
    )
    yield figure(
        FigureKind.NEEDED,
        balance.needed,
        needed,
        ReferenceBody(person, day.body),
        NeedEquation(person, day.need),
        NeedRounding(day.need, balance),
    )
    gap = abs(eaten - needed)
    yield figure(FigureKind.GAP, balance.gap, gap, Balance(balance, gap), Leaning(balance))


def _counted(stop: str, day: Day) -> Iterator[CountedAnswer]:
    """One answer: which way it leans, with what lies between both sums where that is asked as well."""
    asks_gap = day.stop.help is not Help.WORKED
    value = f"{day.balance.lean}{f' {day.balance.gap}' if asks_gap else ''}"
    yield CountedAnswer(f"{stop}.{AnswerKind.LEAN}", stop, AnswerKind.LEAN, value)


KIND = WorkedKind(stop=DayStop, after=(), work=_work, figures=_figures, counted=_counted)
