"""Two sides of the same foods, and the gap between them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from decimal import Decimal
from enum import StrEnum
from typing import Annotated, ClassVar, Literal

from pydantic import Field, GetJsonSchemaHandler, model_validator
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema

from generator.model.asked import MOST_CHOICES
from generator.model.base import Frozen
from generator.model.measure import Measure
from generator.model.names import InnerIds, apart, dashed, slug
from generator.model.stops.base import PauseStop, StopId
from generator.model.text_marks import AsWritten, Code, Heading, OwnName, Source, Text

LARGEST_VALUE = 20_000
"""The most of any measure that one side of a row may hold, in the measure's unit."""


class Solve(StrEnum):
    """What the learner works out."""

    GAP = "gap"
    COUNT = "count"
    TOTAL = "total"


class Aim(StrEnum):
    """Which direction the lesson talks about; it colours nothing and judges nothing."""

    NEITHER = "neither"
    MORE = "more"
    LESS = "less"


class Help(StrEnum):
    """How much of a row's calculation stands there from the start."""

    NONE = "none"
    """Nothing."""
    HOPS = "hops"
    """The hops of counting up on a number line, without their sizes."""
    WORKED = "worked"
    """All of it, to follow; nothing is asked."""

    @property
    def shows_hops(self) -> bool:
        """Whether the hops of counting up are drawn."""
        return self is not Help.NONE


class Estimate(Frozen):
    """A number said before working out, laid on a number line; never right or wrong."""

    prompt: Text
    """What to estimate, and how to say it."""
    row: Code | None = None
    """Id of the row whose gap is estimated, or `total`; without it the first row."""
    choices: tuple[Annotated[int, Field(ge=0, le=LARGEST_VALUE)], ...] = ()
    """Numbers to choose among, 2 to 6; without them any number is said."""

    @model_validator(mode="after")
    def _some_or_none(self) -> Estimate:
        if self.choices and not 2 <= len(set(self.choices)) == len(self.choices) <= MOST_CHOICES:
            raise ValueError(f"needs 2 to {MOST_CHOICES} different `choices:`, or none")
        return self


class Item(Frozen):
    """The food on one side of a row: from the library, or with a value of its own."""

    food: Code | None = None
    """Id in ``site_data/foods.yaml``."""
    amount: AsWritten | None = None
    """``1 medium``, ``2 slices``, ``150 g``."""
    name: OwnName | None = None
    """Wording on the page, where the library's name does not serve."""
    value: (
        Annotated[Decimal, Field(ge=0, le=LARGEST_VALUE, decimal_places=1, allow_inf_nan=False)]
        | None
    ) = None
    """Own value for the whole amount, in the measure's unit; no label is finer than a tenth."""
    source: Source | None = None
    """Where an own value was read: a package label, a school menu."""
    read_on: Annotated[Code, Field(pattern=r"^\d{4}-\d\d-\d\d$")] | None = None
    """The day an own value was read, as ``2026-03-14``."""

    @model_validator(mode="after")
    def _one_way_to_a_number(self) -> Item:
        if self.food is None and self.value is None:
            raise ValueError(
                "needs `food:` with an id of the library, or `name:`, `value:` and `source:`"
            )
        if self.value is None:
            if self.amount is None:
                raise ValueError("needs `amount:`, such as `1 cup` or `150 g`")
        elif self.source is None:
            raise ValueError(
                "has a value without a source: add `source:` and say where the value was read"
            )
        elif self.food is None and self.name is None:
            raise ValueError("needs `name:`, what to call this food on the page")
        return self


class RowEntry(Frozen):
    """One row: two foods. A lesson file may have the list of the two alone; reading writes it out."""

    id: Annotated[
        StopId | None,
        Field(description="Name of the row; without one it is made of its two foods."),
    ] = None
    foods: tuple[Item, Item]
    """One food on each side."""
    help: Help = Help.NONE
    """How much of the calculation stands there from the start: a first row `worked`, then `hops`, then `none`."""

    @classmethod
    def __get_pydantic_json_schema__(
        cls, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> JsonSchemaValue:
        """Both ways to write a row."""
        made = handler.resolve_ref_schema(handler(schema))
        return {"anyOf": [made["properties"]["foods"], made]}


class CompareStop(PauseStop):
    """Two sides, row by row."""

    entries_alone: ClassVar[Mapping[str, str]] = {"rows": "foods"}
    """A row may be its two foods alone."""
    kind: Literal["compare"] = "compare"
    id: StopId
    """Required here: a move stop calls it by this name."""
    measure: Measure
    """What is compared."""
    sides: tuple[Heading, Heading]
    """Names of the two sides, as nouns that begin a sentence: `Home lunch` holds more."""
    rows: Annotated[tuple[RowEntry, ...], Field(min_length=1, max_length=12)]
    """Each row: one food on each side."""
    solve: Annotated[tuple[Solve, ...], Field(min_length=1)] = (Solve.GAP,)
    """What the learner works out."""
    aim: Aim = Aim.NEITHER
    """Which direction the lesson talks about, if any."""
    prompt: Text | None = None
    """A sentence before the rows."""
    estimate: Estimate | None = None
    """A number to say before the rows are worked out."""
    reveal: Text | None = None
    """What to notice once the gaps are found."""

    @property
    def own_numbers(self) -> tuple[Decimal, ...]:
        """Those to choose an estimate from."""
        return tuple(map(Decimal, self.estimate.choices)) if self.estimate else ()

    @property
    def inner_ids(self) -> InnerIds:
        """Those of rows, foods and sides."""
        foods = tuple(tuple(map(food_id, row.foods)) for row in self.rows)
        return InnerIds(_row_ids(self.rows), foods, _side_ids(self.sides))


def _row_ids(rows: Sequence[RowEntry]) -> tuple[str, ...]:
    """Each row's own id, or its two foods; with their amounts where another row has the same two."""
    plain = [_joined(row, food_id) for row in rows]
    seen = Counter(plain)
    return tuple(
        row.id or (_joined(row, food_and_amount) if seen[name] > 1 else name)
        for row, name in zip(rows, plain, strict=True)
    )


def _side_ids(sides: tuple[str, str]) -> tuple[str, str]:
    """Both sides by their names, shortened where that does not make them one."""
    first, second = (apart(slug(side)) for side in sides)
    if first == second:
        first, second = (apart(slug(side, longest=len(side))) for side in sides)
    return first, second


def _joined(row: RowEntry, name: Callable[[Item], str]) -> str:
    """Both foods in the order of the alphabet: a row stays the same when its sides are swapped."""
    return "_".join(sorted(map(name, row.foods)))


def food_id(item: Item) -> str:
    """What a food is called in every language: its id, or a word made of its own name."""
    return item.food or apart(slug(item.name or ""))


def food_and_amount(item: Item) -> str:
    """The same with its amount."""
    return dashed(food_id(item), slug(item.amount) if item.amount else "")
