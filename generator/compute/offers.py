"""Portions of the library that can stand on one side of a row, with what they show and how well known they are."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.label import label_value
from generator.compute.well_known import well_known
from generator.model.amount import parse_amount
from generator.model.food import Food
from generator.model.measure import Measure
from generator.model.wording import FALLBACK


@dataclass(frozen=True, slots=True)
class Offer:
    """A portion that can stand on one side of a row."""

    food: Food
    """From the library."""
    amount: str
    """A portion of its own, as a lesson writes it."""
    exact: Fraction
    """What it holds, in the measure's unit."""
    value: Decimal
    """The same as shown."""
    rank: int
    """Smaller for a better known food and a more natural portion: ``well_known``, its place among
    the portions of the food, and one more where it is not one of something. Ours, no source."""

    @property
    def tenths(self) -> int:
        """What it shows, in whole tenths."""
        return int(self.value * 10)


def offers(foods: Iterable[Food], measure: Measure) -> tuple[Offer, ...]:
    """Every portion whose record has a value, the smallest value first; none of a food ``left_out``."""
    listed = tuple(foods)
    known, out = well_known(listed), {food.id for food in left_out(listed)}
    found = (
        offer
        for food in listed
        if food.id not in out
        for offer in _of_food(food, measure, known[food.id])
    )
    return tuple(sorted(found, key=lambda one: (one.value, one.food.id, one.amount)))


def left_out(foods: Iterable[Food]) -> tuple[Food, ...]:
    """Foods that are eaten only cooked, and those whose allergens nobody has looked at."""
    return tuple(
        food for food in foods if food.entry.raw or "allergens" in food.entry.not_looked_at
    )


def _of_food(food: Food, measure: Measure, known: int) -> Iterator[Offer]:
    per_100g = food.value(measure)
    if per_100g is None:
        return
    for place, portion in enumerate(food.entry.portions):
        amount = portion.names[FALLBACK]
        serving, said = food.serving(amount), parse_amount(amount)
        if serving and said:
            exact = Fraction(per_100g) * serving.grams / 100
            rank = known + place + (said.number != 1)
            yield Offer(food, amount, exact, label_value(measure, exact).value, rank)
