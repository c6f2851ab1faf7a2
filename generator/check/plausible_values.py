"""An own value that no food can have: more energy than fat, more sugars than the food weighs."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from generator.check.food_places import food_place
from generator.check.rule import rule
from generator.compute.holding import Holding
from generator.compute.plausible import most_possible, two_days_worth
from generator.compute.result import LessonResult
from generator.model.amount import parse_amount
from generator.model.figure import FigureKind
from generator.model.measure import Measure
from generator.problems import Place, Problem, Weight


@rule
def plausible_values(result: LessonResult) -> Iterator[Problem]:
    """Own values that cannot be, and own values so large that they are worth a second look.

    Where the weight is known, a value over what the weight can hold must be put right; where it
    is not, more than two days' worth in one item is questioned.
    """
    for figure in result.figures:
        for held in figure.foods if figure.kind is FigureKind.HOLDS else ():
            if held.item.value is not None:
                yield from _problems(food_place(result, figure, "value"), held, figure.measure)


def _problems(place: Place, held: Holding, measure: Measure) -> Iterator[Problem]:
    value, grams = held.shown.exact, _grams(held)
    if grams is None:
        worth = two_days_worth(measure)
        if worth is not None and value > worth:
            what = f"{held.shown.value} {measure.unit} in one item is more than two days' worth"
            hint = f"two days' worth is {worth} {measure.unit}; look at the label again, and give `amount:` in grams"
            yield Problem(place, what, hint, Weight.QUESTION)
    elif value > most_possible(measure, grams):
        most = int(most_possible(measure, grams))
        what = f"{held.item.amount} cannot hold {held.shown.value} {measure.unit}"
        why = measure.entry.most.why
        yield Problem(place, what, f"{most} {measure.unit} is the most there can be: {why}")


def _grams(held: Holding) -> Fraction | None:
    """The weight of an own value's amount: given in grams, or that of a portion of its record."""
    if held.item.amount is None:
        return None
    if held.food and (serving := held.food.serving(held.item.amount)):
        return serving.grams
    amount = parse_amount(held.item.amount)
    return amount.grams if amount and amount.number > 0 else None
