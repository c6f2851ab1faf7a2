"""What the numbers were on the day a lesson was filmed, and what each of them is of."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Annotated

from pydantic import Field

from generator.model.base import Frozen
from generator.model.figure import FigureKind, Tally
from generator.model.measure import Measure, Unit
from generator.model.moment import Moment
from generator.model.places import Places
from generator.model.stops.base import StopId
from generator.model.text_marks import Text

RECORDED = "recorded.yaml"
"""Name of the file beside the lesson file."""
LARGEST_FIGURE = 10_000_000
"""More than any number of a lesson: 24 foods of 20,000, or their sum in counts of a tenth."""


class FilmedFood(Frozen):
    """A food that a filmed number is of."""

    food: Text
    """Its id in ``site_data/foods.yaml``, or a word made of the lesson's own name for it."""
    amount: Text | None = None
    """As the lesson had it."""
    fdc: Annotated[int, Field(gt=0)] | None = None
    """Number of its record in FoodData Central, by which a food is known that has another id today."""


class FilmedFigure(Frozen):
    """One number that is seen or heard in the video."""

    kind: FigureKind
    """What it is: ``holds``, ``gap``, ``count`` …"""
    measure: Measure
    """What was compared."""
    foods: tuple[FilmedFood, ...] = ()
    """What it is of: the food that holds it, the two of its row, or all that were added up."""
    beside: Text | None = None
    """Id of the food on the other side of its row, for what one food holds."""
    side: Text | None = None
    """Name of the side, for a number of one."""
    move: Text | None = None
    """Id of the move that is done so often, for a count at a move stop."""
    person: Text | None = None
    """Whose day it was, for a number of a day."""
    change: Text | None = None
    """Its change, and what takes the place of what in which amounts, at a what-if stop."""
    asked: Text | None = None
    """The sum or the choice it is the answer to, as the lesson had it."""
    value: Annotated[Decimal, Field(ge=0, le=LARGEST_FIGURE, decimal_places=3, allow_inf_nan=False)]
    """What it was, in the measure's unit; a count has none."""
    stop: StopId
    """The stop at which it is seen or heard."""
    start: Moment = Field(alias="from")
    """Where in the video it is first seen or heard, in seconds."""
    end: Moment = Field(alias="to")
    """Where it is gone again, in seconds."""

    @property
    def unit(self) -> Unit | Tally:
        """What the value is counted in."""
        return Tally.TIMES if self.kind is FigureKind.COUNT else self.measure.unit


class RecordedFile(Frozen):
    """What ``recorded.yaml`` says."""

    filmed: Annotated[str, Field(pattern=r"^\d{4}-\d\d-\d\d$")]
    """The day, such as ``2026-03-14``."""
    figures: tuple[FilmedFigure, ...] = ()
    """In the order of the video."""


@dataclass(frozen=True, slots=True)
class Recorded:
    """The file as read."""

    file: RecordedFile
    """What it says."""
    places: Places
    """Where each part of it stands."""
    captions: Mapping[str, str] = field(default_factory=dict, repr=False)
    """The lesson's caption files, name and text: corrections are put between their cues."""
    by_place: bool = False
    """Whether it is of the older shape, which kept numbers by the place of their row: nobody can
    say which food such a number was of, so none of them is used."""
