"""What an amount of a food holds, weighed and rounded as a label would."""

from __future__ import annotations

from fractions import Fraction

from generator.compute.label import Shown, label_value
from generator.compute.result import Holding
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.stops.compare import Item


def hold(item: Item, measure: Measure, library: Library) -> Holding:
    """Weigh a food a lesson names, or take the value the lesson gives.

    Raises:
        ValueError: the food, its portion or its value was not found; reading should have said so.
    """
    food = library.foods[item.food] if item.food else None
    if item.value is not None:
        # A label's figure was rounded by its maker; rounding it again would change what the child can read there.
        shown = Shown(item.value, Fraction(item.value), f"as printed: {item.source}")
        return Holding(item, food, None, None, shown)
    serving = food.serving(item.amount or "") if food else None
    per_100g = food.value(measure) if food else None
    if food is None or serving is None or per_100g is None:
        raise ValueError(f"{item.food}, {item.amount}: not found when the lesson was read")
    exact = Fraction(per_100g) * serving.grams / 100
    return Holding(item, food, serving, Fraction(per_100g), label_value(measure, exact))
