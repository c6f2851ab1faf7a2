"""A question whose answer can be checked: choices with one right, or an answer that the lesson computes."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from pydantic import Field

from generator.model.base import Frozen
from generator.model.stops.base import StopId
from generator.model.text_marks import Code, Text

MOST_CHOICES = 6
Sum = Annotated[Code, Field(min_length=1, max_length=300)]
"""Arithmetic over names of numbers, as ``trace`` prints them: ``half lunch.total.gap``."""


class Among(StrEnum):
    """What of a comparison is chosen from."""

    FOODS = "foods"
    """Every food of its rows, by what it holds."""
    SIDES = "sides"
    """Its two sides, by what they hold in all rows."""


class Choice(Frozen):
    """One of the answers to choose from."""

    says: Text
    """The answer in words."""
    right: bool = False
    """`true` for the one that is right."""


class Which(Frozen):
    """Which food or which side of a comparison: the lesson knows it."""

    of: StopId
    """Id of the compare stop."""
    holds: Sum
    """`most`, `least`, or arithmetic over names of numbers that only one of them holds."""
    among: Among = Among.FOODS
    """What is chosen from: its `foods` or its `sides`."""

    @property
    def asks_for_an_amount(self) -> bool:
        """Whether a food is looked for by how much it holds, and not as the one of the most or the least."""
        return self.among is Among.FOODS and self.holds not in {"most", "least"}


def check_choices(choices: tuple[Choice, ...]) -> None:
    """Raise ValueError where there is not one right answer among several."""
    if choices and not 2 <= len(choices) <= MOST_CHOICES:
        raise ValueError(f"needs 2 to {MOST_CHOICES} `choices:`")
    if choices and sum(one.right for one in choices) != 1:
        raise ValueError("needs one choice that is right: write `right: true` below it alone")
