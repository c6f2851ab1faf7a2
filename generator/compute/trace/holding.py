"""From a food record to the value a child sees."""

from __future__ import annotations

from generator.compute.result import Holding
from generator.compute.trace.figure import Step
from generator.compute.trace.plain import plain
from generator.model.measure import Measure


def holding_steps(held: Holding, measure: Measure) -> tuple[Step, ...]:
    if held.food is None or held.serving is None or held.per_100g is None:
        when = f", read on {held.item.read_on}" if held.item.read_on else ""
        return (
            Step("record", f"own value: {held.item.source}{when}"),
            Step("rounding", held.shown.rule),
        )
    food, serving, unit = held.food, held.serving, measure.unit
    steps = [
        Step(
            "record",
            f"{food.release}, FDC {food.entry.fdc}, {food.entry.record}: {plain(held.per_100g)} {unit} in 100 g",
        )
    ]
    if serving.portion:
        weighs = f"{serving.portion.record} weighs {serving.portion.grams} g"
        steps.append(
            Step(
                "portion",
                weighs
                + (
                    ""
                    if serving.times == 1
                    else f"; {plain(serving.times)} × {serving.portion.grams} g = {plain(serving.grams)} g"
                ),
            )
        )
    else:
        steps.append(Step("portion", f"{plain(serving.grams)} g, as the lesson gives it"))
    steps.append(
        Step(
            "amount",
            f"{plain(held.per_100g)} × {plain(serving.grams)} ÷ 100 = {plain(held.shown.exact)} {unit}",
        )
    )
    steps.append(
        Step(
            "rounding",
            f"21 CFR 101.9{held.shown.rule}; half goes up: {plain(held.shown.exact)} → {held.shown.value} {unit}",
        )
    )
    if held.often:
        steps.append(Step("how often", f"{held.often.frequency or 'no word'}: {held.often.rule}"))
    return tuple(steps)
