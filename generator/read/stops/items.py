"""A food that a stop names: whether it is in the library, in this amount, with this value."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from generator.model.food import Food
from generator.model.measure import Measure
from generator.model.stops.compare import LARGEST_VALUE
from generator.model.wording import FALLBACK
from generator.problems import Place, Problem
from generator.read.as_written import keyed, word
from generator.read.meant import either
from generator.read.source import Data
from generator.read.stops.kind import WrittenStop


@dataclass(frozen=True, slots=True)
class UnknownFood(Problem):
    """A food that is not in the library, before anybody looked what was meant."""

    food: str = ""
    """What stands in its place."""


def item_problems(
    data: Data, written: WrittenStop, measure: Measure | None, *keys: str | int
) -> Iterator[Problem]:
    """What is wrong with one food of a stop.

    Args:
        data: what stands there.
        written: the stop.
        measure: what is asked of the food; nothing where that is misspelled.
        keys: where in the stop the food stands.
    """
    item = keyed(data)
    name = word(item, "food")
    if name is None:
        return
    food = written.library.foods.get(name)
    if food is None:
        what = f"there is no food `{name}` in site_data/foods.yaml"
        yield UnknownFood(written.place(*keys, "food"), what, food=name)
        return
    if food.entry.raw:
        yield _raw(food, written.library.foods.values(), written.place(*keys, "food"))
    if "value" in item:
        return
    yield from _amount(word(item, "amount"), food, written.place(*keys, "amount"), measure)
    if measure and food.value(measure) is None:
        yield _no_value(food, measure, written.place(*keys, "food"))


def _raw(food: Food, foods: Iterable[Food], place: Place) -> Problem:
    """A food that nobody eats as it is, with cooked ones of its kind."""
    kind = food.entry.record.split(",")[0]
    cooked = [
        one.id for one in foods if one.entry.record.split(",")[0] == kind and not one.entry.raw
    ]
    what = f"`{food.id}` is raw, and nobody eats it before it is cooked"
    find = f'look for a cooked one with: python3 generator foods find "{kind.lower()} cooked"'
    return Problem(place, what, f"take {either(cooked[:3])}, or {find}" if cooked else find)


def _no_value(food: Food, measure: Measure, place: Place) -> Problem:
    """A figure the lesson needs: blank in the record, or not in the library yet."""
    if not food.entry.per_100g.gives(measure.value):
        what = f"the entry of `{food.id}` in site_data/foods.yaml does not say its {measure.value}"
        hint = (
            "take a download of its release in and run `python3 generator foods refresh`, or add "
            f"`{measure.value}:` from its record {food.entry.fdc} yourself; no value is not zero"
        )
        return Problem(place, what, hint)
    what = f"the record of `{food.id}` has no value for {measure.value}"
    hint = "choose another food, or give `value:` and `source:`; no value is not zero"
    return Problem(place, what, hint)


def _amount(
    amount: str | None, food: Food, place: Place, measure: Measure | None
) -> Iterator[Problem]:
    """An amount that cannot be weighed, or holds more than anybody's plate."""
    if amount is None:
        return
    serving = food.serving(amount)
    if serving is None:
        yield Problem(place, f"`{amount}` is no portion of `{food.id}`", _portions(food))
        return
    per_100g = food.value(measure) if measure else None
    if measure and Fraction(per_100g or 0) * serving.grams / 100 > LARGEST_VALUE:
        what = f"`{amount}` of `{food.id}` holds more than {LARGEST_VALUE} {measure.unit}"
        yield Problem(place, what, "write an amount that somebody can eat")


def _portions(food: Food) -> str:
    names = either([portion.name(FALLBACK).words for portion in food.entry.portions])
    return f"write {names}, another number of it in digits, such as `1/2` or `3`, or grams such as `150 g`"
