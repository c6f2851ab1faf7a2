"""From a food record to the value a child sees."""

from __future__ import annotations

from generator.compute.result import Holding
from generator.compute.trace.figure import Step
from generator.compute.trace.plain import plain
from generator.model.food import Serving
from generator.model.measure import Measure


def holding_steps(held: Holding, measure: Measure) -> tuple[Step, ...]:
    """The steps to what one side of a row holds."""
    if held.food is None or held.serving is None or held.per_100g is None:
        when = f", read on {held.item.read_on}" if held.item.read_on else ""
        return (
            Step("record", f"own value: {held.item.source}{when}"),
            Step("rounding", held.shown.rule),
        )
    food, serving, unit = held.food, held.serving, measure.unit
    return (
        Step(
            "record",
            f"{food.release}, FDC {food.entry.fdc}, {food.entry.record}: {plain(held.per_100g)} {unit} in 100 g",
        ),
        Step("portion", _weighed(serving)),
        Step(
            "amount",
            f"{plain(held.per_100g)} × {plain(serving.grams)} ÷ 100 = {plain(held.shown.exact)} {unit}",
        ),
        Step(
            "rounding",
            f"21 CFR 101.9{held.shown.rule}; half goes up: {plain(held.shown.exact)} → {held.shown.value} {unit}",
        ),
    )


def _weighed(serving: Serving) -> str:
    portion = serving.portion
    if portion is None:
        return f"{plain(serving.grams)} g, as the lesson gives it"
    weighs = f"{portion.record} weighs {portion.grams} g"
    if serving.times == 1:
        return weighs
    return f"{weighs}; {plain(serving.times)} × {portion.grams} g = {plain(serving.grams)} g"
