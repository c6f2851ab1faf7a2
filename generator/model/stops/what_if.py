"""One food of a comparison changed, and what that does to its gap; the learner chooses and guesses."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from typing import Annotated, Literal, Self

from pydantic import ConfigDict, Field, model_validator

from generator.model.base import Frozen
from generator.model.names import InnerIds, apart, dashed, slug
from generator.model.stops.base import PauseStop, StopId
from generator.model.stops.compare import Item, food_and_amount, food_id
from generator.model.text_marks import Code, OwnName, Text

FEWEST, MOST = 2, 6
"""Changes to choose from: one is no choice, and more than six are not looked through."""
LEFT_OUT = "left-out"
"""Stands in the name of a change where the new food would stand."""
Seat = tuple[int, int]
"""Row and side of a food, both counted from 0."""


class Change(Frozen):
    """One food of the comparison for another, for another amount, for two, or for none."""

    model_config = ConfigDict(
        json_schema_extra={"anyOf": [{"required": ["to"]}, {"required": ["leave_out"]}]}
    )

    id: Annotated[
        StopId | None,
        Field(description="Name of the change; without one it is made of its foods."),
    ] = None
    change: Code
    """The food that is changed, by its id or its own name in the comparison."""
    row: Code | None = None
    """Id of its row, where the food stands in more than one."""
    side: Code | None = None
    """Its side, where the food stands on both."""
    to: Item | None = None
    """What stands there instead: another food, or another amount of the same one."""
    also: Item | None = Field(default=None, alias="and")
    """A second food beside it, such as half a cup of broth `and` half a cup of water."""
    leave_out: bool = False
    """`true` where nothing stands there instead."""
    name: OwnName | None = None
    """What the change is called on the page, where its foods and amounts do not serve."""

    @model_validator(mode="after")
    def _says_what_it_becomes(self) -> Self:
        if self.leave_out and (self.to or self.also):
            raise ValueError(
                "leaves the food out and puts another there: keep `leave_out: true` or `to:`"
            )
        if not self.leave_out and self.to is None:
            raise ValueError(
                "does not say what the food becomes: add `to: {food: …, amount: …}`, or `leave_out: true`"
            )
        return self

    @property
    def items(self) -> tuple[Item, ...]:
        """What stands there instead, in the order of the page; nothing where the food is left out."""
        return tuple(item for item in (self.to, self.also) if item)


class WhatIfStop(PauseStop):
    """Change one food of a comparison, and see what that does to the gap."""

    kind: Literal["what_if"] = "what_if"
    compare: StopId = Field(alias="for")
    """Id of the compare stop above whose food is changed."""
    changes: Annotated[tuple[Change, ...], Field(min_length=FEWEST, max_length=MOST)]
    """What the learner may change, each for itself."""
    prompt: Text | None = None
    """A sentence before the changes."""
    reveal: Text | None = None
    """What to notice once the changes were tried."""

    @property
    def inner_ids(self) -> InnerIds:
        """Those of its changes, and of the foods they bring."""
        return InnerIds(
            _change_ids(self.changes), tuple(tuple(map(food_id, one.items)) for one in self.changes)
        )

    def _about(self) -> str:
        return f"what if {self.compare}"


def seats(compared: InnerIds, change: Change) -> tuple[Seat, ...]:
    """Where in a comparison the food of a change stands; reading asks for exactly one.

    Args:
        compared: the names in the comparison.
        change: names a food, and where that stands twice its row or its side.
    """
    return tuple(
        (row, side)
        for row, foods in enumerate(compared.foods)
        for side, food in enumerate(foods)
        if is_called(food, change.change)
        and change.row in {None, compared.parts[row]}
        and (change.side is None or is_called(compared.sides[side], change.side))
    )


def is_called(name: str, written: str) -> bool:
    """Whether an educator who wrote this means the food or the side of that name."""
    return name in {written, apart(slug(written)), apart(slug(written, longest=len(written)))}


def _change_ids(changes: Sequence[Change]) -> tuple[str, ...]:
    """Each change's own id, or its foods; with amounts, row and side where another has the same."""
    ways = [[_made(one, name) for one in changes] for name in (food_id, food_and_amount)]
    where = [dashed(*(slug(part) for part in (one.row, one.side) if part)) for one in changes]
    ways.append([f"{way}_{at}" for way, at in zip(ways[-1], where, strict=True)])
    counts = [Counter(way) for way in ways]
    return tuple(
        one.id
        or next(
            (way[at] for way, count in zip(ways, counts, strict=True) if count[way[at]] == 1),
            ways[-1][at],
        )
        for at, one in enumerate(changes)
    )


def _made(change: Change, name: Callable[[Item], str]) -> str:
    """What is changed and what it becomes."""
    new = [name(item) for item in change.items] or [LEFT_OUT]
    return "_".join([slug(change.change, longest=len(change.change)), *new])
