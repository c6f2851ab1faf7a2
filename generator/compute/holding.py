"""What an amount of a food holds, weighed and rounded as a label would."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from generator.compute.label import Shown, label_value
from generator.model.food import Food, Serving
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.stops.compare import Item
from generator.model.unit_words import UnitForms
from generator.model.wording import Wording


@dataclass(frozen=True, slots=True)
class Holding:
    """What one side of a row holds."""

    item: Item
    """As the lesson names it."""
    food: Food | None
    """The record, or nothing for a value of its own."""
    serving: Serving | None
    """The amount weighed, or nothing for a value of its own."""
    per_100g: Fraction | None
    """The record's value for 100 g, in the measure's unit."""
    shown: Shown
    """What it holds, as the page shows it."""
    id: str
    """Its food's id, or a word made of its own name; the same in every language."""
    units: Mapping[str, UnitForms] = field(default_factory=dict, repr=False)
    """What the unit of its amount is called, by language; one that lacks the words is left out."""

    def name(self, language: str) -> Wording[str]:
        """What the food is called in a language: the lesson's own wording, else the library's name.

        A lesson's wording is in the lesson's language; ``in_language`` has put another in its place.
        """
        if self.item.name:
            return Wording(self.item.name, foreign=False)
        return self.food.name(language) if self.food else Wording("", foreign=False)


def hold(item: Item, measure: Measure, library: Library, name: str) -> Holding:
    """Weigh a food a lesson names, or take the value the lesson gives.

    Args:
        item: as the lesson names it.
        measure: what is compared.
        library: where its record is.
        name: what the food is called in every language.

    Raises:
        ValueError: the food, its portion or its value was not found; reading should have said so.
    """
    food = library.foods[item.food] if item.food else None
    serving = food.serving(item.amount or "") if food else None
    units = _units(serving, library)
    if item.value is not None:
        # A label's figure was rounded by its maker; rounding it again would change what the child can read there.
        shown = Shown(item.value, Fraction(item.value), rounding=None)
        return Holding(item, food, None, None, shown, name, units)
    per_100g = food.value(measure) if food else None
    if food is None or serving is None or per_100g is None:
        raise ValueError(f"{item.food}, {item.amount}: not found when the lesson was read")
    exact = Fraction(per_100g) * serving.grams / 100
    shown = label_value(measure, exact)
    return Holding(item, food, serving, Fraction(per_100g), shown, name, units)


def _units(serving: Serving | None, library: Library) -> dict[str, UnitForms]:
    portion = serving.portion if serving else None
    if portion is None:
        return {}
    said = {tag: portion.unit(tag, words.units) for tag, words in library.words.items()}
    return {tag: forms for tag, forms in said.items() if forms}
