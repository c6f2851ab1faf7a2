"""An invented adult's day: what it gave and what it took, and which way it leans."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from decimal import Decimal
from enum import StrEnum
from typing import Annotated, Literal

from pydantic import Field, field_validator

from generator.model.base import Frozen
from generator.model.names import InnerIds, dashed, slug
from generator.model.stops.base import PauseStop
from generator.model.stops.compare import Help, Item, food_and_amount, food_id
from generator.model.text_marks import AsWritten, OwnName, Text

YOUNGEST = 19
"""Years from which the adults' equations hold (NASEM 2023). No `day` is about anybody younger: beside
a learner's own age its number would be a target."""


class Sex(StrEnum):
    """Whose equation and reference values are taken; a lesson says ``woman`` or ``man``."""

    FEMALE = "woman"
    MALE = "man"


class ActivityLevel(StrEnum):
    """Physical activity level of the energy equations (NASEM 2023, Table 5-4)."""

    INACTIVE = "inactive"
    LOW_ACTIVE = "low active"
    ACTIVE = "active"
    VERY_ACTIVE = "very active"


class Person(Frozen):
    """An adult, invented. Height and weight are reference values, never anybody's own."""

    name: AsWritten
    """A name from the place of the lesson; nobody real."""
    age: Annotated[int, Field(le=100)]
    """Years, 19 or more: no `day` is about a child."""
    sex: Sex
    """Whose equation is taken."""
    activity: ActivityLevel
    """How active the day was; the equations know four levels."""

    @field_validator("age")
    @classmethod
    def _is_an_adult(cls, age: int) -> int:
        if age < YOUNGEST:
            raise ValueError(f"must be {YOUNGEST} or more: a day is about an adult, never a child")
        return age


class Eaten(Item):
    """A food of the day."""

    when: OwnName | None = None
    """The meal it belongs to, such as ``Breakfast``."""


class DayStop(PauseStop):
    """What an invented adult ate and did in a day; the learner compares two numbers, then checks."""

    kind: Literal["day"] = "day"
    person: Person
    """Whose day it was: an adult."""
    ate: Annotated[tuple[Eaten, ...], Field(min_length=1, max_length=24)]
    """Foods with their amounts, in the order of the day."""
    did: Annotated[tuple[Text, ...], Field(min_length=1)]
    """What was done, in plain words; it explains the activity level."""
    help: Help = Help.NONE
    """How much of the subtraction stands there from the start: a first day `worked`, then `hops`, then `none`."""
    prompt: Text | None = None
    """A sentence before the day."""
    reveal: Text | None = None
    """What to notice once it is checked."""

    @property
    def inner_ids(self) -> InnerIds:
        """Those of its foods."""
        return InnerIds(_eaten_ids(self.ate), tuple((food_id(food),) for food in self.ate))

    @property
    def own_numbers(self) -> tuple[Decimal, ...]:
        """The age."""
        return (Decimal(self.person.age),)

    def _about(self) -> str:
        return f"day of {self.person.name}"


def _eaten_ids(foods: Sequence[Eaten]) -> tuple[str, ...]:
    """Each food of a day; with its amount where it is eaten twice, and its meal where that does not do."""
    meals: list[str] = []
    for food in foods:
        meals.append(slug(food.when) if food.when else meals[-1] if meals else "")
    ways: list[list[str]] = [
        [food_id(food) for food in foods],
        [food_and_amount(food) for food in foods],
        [dashed(food_and_amount(food), meal) for food, meal in zip(foods, meals, strict=True)],
    ]
    counts = [Counter(way) for way in ways]
    return tuple(
        next(
            (way[at] for way, count in zip(ways, counts, strict=True) if count[way[at]] == 1),
            ways[-1][at],
        )
        for at in range(len(foods))
    )
