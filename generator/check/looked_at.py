"""A food of a lesson whose allergens or risk of choking nobody has looked at."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.food_places import food_place
from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.model.figure import FigureKind
from generator.model.food import Food
from generator.problems import Problem, Weight


@rule
def foods_looked_at(result: LessonResult) -> Iterator[Problem]:
    """A question for each food of the library in a lesson, once, that care can say nothing of."""
    told: set[str] = set()
    for figure in result.figures:
        for held in figure.foods if figure.kind is FigureKind.HOLDS else ():
            food = held.food
            if food and food.entry.not_looked_at and food.id not in told:
                told.add(food.id)
                what, hint = _told(food)
                place = food_place(result, figure, "food")
                yield Problem(place, what, hint, Weight.QUESTION)


_ASKED = {
    "allergens": (
        "its allergens",
        "`allergens: []` where none is plain, or a list such as `[milk, wheat]`",
    ),
    "choking": (
        "whether a child under 4 can choke on it",
        "`choking: true` or `choking: false`",
    ),
}
"""By key of an entry: what nobody has looked at, and what to write."""


def _told(food: Food) -> tuple[str, str]:
    asked = [_ASKED[key] for key in food.entry.not_looked_at]
    what = f"nobody has looked at `{food.id}` yet: {' and '.join(what for what, _ in asked)}"
    write = " and ".join(write for _, write in asked)
    return what, f"write {write} in its entry in site_data/foods.yaml"
