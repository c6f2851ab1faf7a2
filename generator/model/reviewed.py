"""Who read a lesson, by role and never by name, when, and the numbers and texts that were read."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Annotated

from pydantic import AfterValidator, BeforeValidator, Field

from generator.model.base import Frozen
from generator.model.figure import FigureKind
from generator.model.places import Places
from generator.model.recorded import LARGEST_FIGURE
from generator.model.role import Role
from generator.model.text_marks import Code

REVIEWED = "reviewed.yaml"
"""Name of the file beside the lesson file."""
OWN = ""
"""Stands in the place of a language for a role that is written once, in the language of the lesson."""


def _by_language(role: object) -> object:
    """A role that is written once, as one of its languages."""
    return {OWN: role} if isinstance(role, str) else role


def _a_day(written: str) -> str:
    try:
        return date.fromisoformat(written).isoformat()
    except ValueError:
        what = f"is `{written[:20]}`, which is no day"
        raise ValueError(f"{what}: write year, month and day, such as 2026-03-14") from None


class ReadNumber(Frozen):
    """A number as it was read."""

    kind: FigureKind
    """What it is: ``holds``, ``gap``, ``count`` …"""
    value: Annotated[Decimal, Field(ge=0, le=LARGEST_FIGURE, decimal_places=3, allow_inf_nan=False)]
    """As shown."""
    unit: Code
    """In which ``value`` is given."""
    of: Code
    """What it is of: foods with their amounts and records, a side, a person of a day."""


class Review(Frozen):
    """One reading of a lesson by somebody who knows."""

    by: Annotated[Mapping[Code, Role], BeforeValidator(_by_language), Field(min_length=1)]
    """What the reader is, never who: ``registered dietitian``, or ``{en: …, es: …}``."""
    on: Annotated[Code, AfterValidator(_a_day)]
    """The day, such as ``2026-03-14``."""
    languages: Annotated[tuple[Code, ...], Field(min_length=1)]
    """Languages in which it was read."""
    numbers: Mapping[Code, ReadNumber]
    """The numbers by their names in the ledger."""
    facts: Mapping[Code, Code] = {}
    """What else follows from the lesson file, by name: allergens, what can choke, which moves are done."""
    texts: Mapping[Code, Mapping[Code, tuple[Code, ...]]]
    """By language and by where they stand: a mark of six signs for each text."""


class ReviewedFile(Frozen):
    """What ``reviewed.yaml`` says."""

    lesson: Code
    """Id of the lesson that was read: a copied folder is another lesson."""
    reviews: tuple[Review, ...] = ()
    """In the order in which they were given."""


@dataclass(frozen=True, slots=True)
class Reviewed:
    """The file as read."""

    file: ReviewedFile
    """What it says."""
    places: Places
    """Where each part of it stands."""
