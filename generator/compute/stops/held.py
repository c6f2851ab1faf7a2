"""What one food holds, as a number of the ledger with its steps back to the record."""

from __future__ import annotations

from generator.compute.figure import Figure
from generator.compute.holding import Holding
from generator.compute.steps import FromRecord, LabelRounding, OfAmount, OwnValue, Step, Weighed
from generator.model.figure import FigureKind
from generator.model.measure import Measure


def held_figure(stop: str, name: str, held: Holding, measure: Measure) -> Figure:
    """What a food of a stop holds; ``name`` is that of its row, or its own in a day."""
    return Figure(
        id=f"{stop}.{name}",
        kind=FigureKind.HOLDS,
        value=held.shown.value,
        measure=measure,
        unit=measure.unit,
        exact=held.shown.exact,
        stop=stop,
        steps=_steps(held, measure),
        row=name,
        foods=(held,),
    )


def _steps(held: Holding, measure: Measure) -> tuple[Step, ...]:
    shown, rounding = held.shown, held.shown.rounding
    if not (held.food and held.serving and rounding) or held.per_100g is None:
        return (OwnValue(held.item),)
    unit, grams = measure.unit, held.serving.grams
    return (
        FromRecord(held.food, held.per_100g, unit),
        Weighed(held.serving),
        OfAmount(held.per_100g, grams, shown.exact, unit),
        LabelRounding(shown.exact, shown.value, rounding, unit),
    )
