"""Figures of the site's own foods that no food can have, and figures that are worth a look."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import Decimal
from fractions import Fraction
from typing import assert_never

from generator.carried import is_place
from generator.compute.food_figures import Doubt, DoubtKind, doubts, label_rounding
from generator.compute.rounding import to_places
from generator.model.food import Food
from generator.model.food_record import FIGURES, LABEL_DATA
from generator.model.library import Library
from generator.model.measure import Measure
from generator.problems import Place, Problem, Weight


def food_figures(library: Library) -> Iterator[Problem]:
    """What cannot be must be put right; what may be is a question, unless the entry says why it is so.

    The foods that the program brings along are its tests' business.
    """
    for food in library.foods.values():
        place = library.places.get(("foods", food.id, "per_100g"), Place("site_data/foods.yaml"))
        if not is_place(place.path):
            yield from _of_food(food, place)


def _of_food(food: Food, place: Place) -> Iterator[Problem]:
    held = {name: food.entry.per_100g.value(name) for name in FIGURES}
    for doubt in doubts(held, _rounding(food)):
        if not doubt.can_be:
            yield Problem(place, told(f"`{food.id}`", doubt), way_out(doubt, food.entry.fdc))
        elif not food.entry.as_published:
            what = told(f"`{food.id}`", doubt)
            yield Problem(place, what, way_out(doubt, food.entry.fdc), Weight.QUESTION)


def _rounding(food: Food) -> Decimal:
    """How coarsely its figures are rounded: as records do, or as the label of a package."""
    if not food.release.startswith(LABEL_DATA):
        return Decimal(1)
    return label_rounding(min(portion.grams for portion in food.entry.portions))


def told(food: str, doubt: Doubt) -> str:
    """What is doubtful, as a sentence without a full stop.

    Args:
        food: what the food is called in it.
        doubt: what was found.
    """
    name, value, limit = _called(doubt.figure), _said(doubt.value), _said(doubt.limit)
    held = f"{food} {'may not hold' if doubt.can_be else 'cannot hold'} {value} kcal in 100 g"
    match doubt.kind:
        case DoubtKind.TOO_MUCH:
            unit = _unit(doubt.figure)
            return f"{food} cannot hold {value} {unit} of {name} in 100 g: {limit} {unit} is the most there can be"
        case DoubtKind.PARTS:
            of = _called(doubt.whole)
            return f"{food} cannot hold {value} g of {name} in {limit} g of {of}, of which it is a part"
        case DoubtKind.TOGETHER:
            return f"the protein, fat and carbohydrate in 100 g of {food} cannot weigh {value} g"
        case DoubtKind.BELOW_FAT:
            return f"{held}: its fat alone gives {limit}"
        case DoubtKind.BEYOND_ALL | DoubtKind.LOW | DoubtKind.HIGH:
            return f"{held}: its protein, fat and carbohydrate give about {limit}"
        case _:
            assert_never(doubt.kind)


def way_out(doubt: Doubt, fdc: int) -> str:
    """What to do about it: a sentence without a full stop."""
    look = f"look at its record {fdc} again"
    why = _WHY.get(doubt.kind, "")
    if doubt.kind is DoubtKind.TOO_MUCH and doubt.figure in _MEASURES:
        why = _MEASURES[doubt.figure].entry.most.why
    if doubt.can_be:
        return f"{look}; where it is so ({why}), write `as_published:` and the reason in its entry"
    return f"{look}; {why}" if why else look


_MEASURES: Mapping[str, Measure] = {measure.value: measure for measure in Measure}
_WHY: Mapping[DoubtKind, str] = {
    DoubtKind.BEYOND_ALL: "alcohol in all the rest of it would not give as much; 1 kcal is 4.184 kJ",
    DoubtKind.HIGH: "alcohol gives energy too",
    DoubtKind.LOW: "fiber and polyols give less energy than sugar",
}


def _called(figure: str) -> str:
    return figure.replace("_", " ")


def _unit(figure: str) -> str:
    return _MEASURES[figure].unit if figure in _MEASURES else "g"


def _said(value: Decimal) -> str:
    """A figure without more digits than anybody reads."""
    return format(to_places(Fraction(value), 2).normalize(), "f")
