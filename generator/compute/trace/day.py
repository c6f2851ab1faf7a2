"""The numbers of a day: what was eaten, and what such a day needs."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

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
        f"{stop_id}.needed", balance.needed, "kcal", Fraction(day.need.total), _need_steps(day)
    )
    lean = Step(
        "subtraction",
        f"{balance.eaten} ÷ {balance.needed} = {to_places(balance.ratio, 2)}: {balance.lean}",
    )
    yield Figure(f"{stop_id}.gap", balance.gap, "kcal", Fraction(balance.gap), (lean,))


def _need_steps(day: Day) -> tuple[Step, ...]:
    person, body, need = day.stop.person, day.body, day.need
    return (
        Step(
            "record",
            f"reference {person.sex} of {person.age} years: {body.height_cm} cm, {body.weight_kg} kg "
            "(CDC 2000 growth charts, medians)",
        ),
        Step(
            "equation", f"NASEM 2023, {person.activity}: {need.equation} = {need.spent} kcal a day"
        ),
        Step("growth", f"and {need.growth} kcal a day for growth (NASEM 2023, Table 5-5)"),
        Step("rounding", f"to the nearest 10 kcal: {need.total} → {day.balance.needed}"),
    )
