"""An invented person's day: what was eaten and done, and which way it leans."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Literal

from pydantic import Field

from generator.model.base import Frozen
from generator.model.stops.base import PauseStop, Text
from generator.model.stops.compare import Item


class Sex(StrEnum):
    """Whose equation and reference body are taken."""

    GIRL = "girl"
    BOY = "boy"


class ActivityLevel(StrEnum):
    """Physical activity level of the energy equations (NASEM 2023, Table 5-4)."""

    INACTIVE = "inactive"
    LOW_ACTIVE = "low active"
    ACTIVE = "active"
    VERY_ACTIVE = "very active"


class Person(Frozen):
    """Somebody invented. Height and weight are reference values for the age, never a child's own."""

    name: Text
    """A name from the place of the lesson; nobody real."""
    age: Annotated[int, Field(ge=6, le=12)]
    """Years; reference heights and weights are kept for 6 to 12."""
    sex: Sex
    """Whose equation is taken."""
    activity: ActivityLevel
    """How active the day was; the equations know four levels."""


class Eaten(Item):
    """A food of the day."""

    when: Text | None = None
    """The meal it belongs to, such as ``Breakfast``."""


class DayStop(PauseStop):
    """What an invented person ate and did in a day; the learner decides first, then checks."""

    kind: Literal["day"] = "day"
    person: Person
    """Who the day belongs to."""
    ate: Annotated[tuple[Eaten, ...], Field(min_length=1, max_length=24)]
    """Foods with their amounts, in the order of the day."""
    did: Annotated[tuple[Text, ...], Field(min_length=1)]
    """What was done, in plain words; it explains the activity level."""
    prompt: Text | None = None
    """A sentence before the day."""
    reveal: Text | None = None
    """What to notice once it is checked."""

    def _about(self) -> str:
        return f"day of {self.person.name}"
