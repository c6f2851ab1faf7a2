"""What the numbers were on the day a lesson was filmed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Annotated

from pydantic import Field

from generator.model.base import Frozen
from generator.model.moment import Moment
from generator.model.places import Places
from generator.model.stops.base import StopId, Text

RECORDED = "recorded.yaml"
"""Name of the file beside the lesson file."""


class FilmedFigure(Frozen):
    """One number that is seen or heard in the video."""

    id: Text
    """Its address in the lesson, as `plumline trace` gives it: ``lunch.row-1.first``."""
    value: Annotated[Decimal, Field(ge=0, le=1_000_000, decimal_places=3, allow_inf_nan=False)]
    """What it was, in ``unit``."""
    unit: Text
    """``kcal``, ``mg``, ``g`` or ``times``."""
    stop: StopId
    """The stop it belongs to."""
    start: Moment = Field(alias="from")
    """Where in the video it is first seen or heard, in seconds."""
    end: Moment = Field(alias="to")
    """Where it is gone again, in seconds."""


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
    places: Places
    captions: Mapping[str, str] = field(default_factory=dict, repr=False)
    """The lesson's caption files, name and text: corrections are put between their cues."""
