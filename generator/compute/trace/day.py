"""The numbers of a day: what it gave, and what it took."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from generator.compute.day import DayBalance
from generator.compute.result import Day
from generator.compute.rounding import to_places
from generator.compute.trace.figure import Figure, Step
from generator.compute.trace.holding import holding_steps
from generator.model.measure import Measure


def day_figures(stop_id: str, day: Day) -> Iterator[Figure]:
    for number, held in enumerate(day.eaten, 1):
        steps = holding_steps(held, Measure.ENERGY)
        yield Figure(f"{stop_id}.food-{number}", held.shown.value, "kcal", held.shown.exact, steps)
    balance = day.balance
    added = " + ".join(str(held.shown.value) for held in day.eaten)
    total = sum((held.shown.exact for held in day.eaten), Fraction(0))
    step = Step("sum", f"{added} = {balance.eaten}, of shown values")
    yield Figure(f"{stop_id}.eaten", balance.eaten, "kcal", total, (step,))
    yield Figure(
        f"{stop_id}.needed", balance.needed, "kcal", Fraction(day.need.kcal), _need_steps(day)
    )
    yield Figure(
        f"{stop_id}.gap", balance.gap, "kcal", Fraction(balance.gap), _gap_steps(day.balance)
    )


def _gap_steps(balance: DayBalance) -> tuple[Step, ...]:
    larger, smaller = (pick(balance.eaten, balance.needed) for pick in (max, min))
    ratio = f"{balance.eaten} ÷ {balance.needed} = {to_places(balance.ratio, 2)}"
    return (
        Step("subtraction", f"{larger} − {smaller} = {balance.gap}, of shown values"),
        Step("lean", f"{ratio}: {balance.lean}; up to {balance.even_within} kcal is even"),
    )


def _need_steps(day: Day) -> tuple[Step, ...]:
    person, body, need = day.stop.person, day.body, day.need
    return (
        Step(
            "record",
            f"reference {person.sex}: {body.height_cm} cm, {body.weight_kg} kg "
            "(IOM 2005, Dietary Reference Intakes for Energy)",
        ),
        Step(
            "equation",
            f"NASEM 2023, {person.sex} of {person.age} years, {person.activity}: "
            f"{need.equation} = {need.kcal} kcal a day",
        ),
        Step("rounding", f"to the nearest 10 kcal: {need.kcal} → {day.balance.needed}"),
    )
