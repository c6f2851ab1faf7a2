"""One number of a lesson: what it is, what it is of, and the steps that lead to it."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.holding import Holding
from generator.compute.steps import Step
from generator.model.figure import FigureKind, Tally
from generator.model.measure import Measure, Unit
from generator.model.places import Path


@dataclass(frozen=True, slots=True)
class Figure:
    """A number of a lesson."""

    id: str
    """Its name in the lesson, made of the names of what it belongs to: ``lunch.apple-raw_pear-raw.gap``."""
    kind: FigureKind
    value: Decimal
    """As shown, in ``unit``."""
    measure: Measure
    """What the lesson compares there."""
    unit: Unit | Tally
    """Of ``value`` and ``exact``."""
    exact: Fraction
    """Before rounding; the same as ``value`` where nothing was rounded."""
    stop: str
    """Id of the stop it belongs to."""
    steps: tuple[Step, ...]
    """From the record to the value, in order."""
    row: str = ""
    """Id of its row, or of its food of a day; ``total`` for all rows together; empty for the whole stop."""
    side: int | None = None
    """Which side it belongs to, 0 or 1; nothing for both."""
    foods: tuple[Holding, ...] = ()
    """What it is about: the food that holds it, the two of its row, or all that were added up."""
    move: str = ""
    """Id of the move whose minutes it gives."""
    change: str = ""
    """Id of the change of a what-if stop that it follows from."""
    written: Path = ()
    """Keys and numbers from its stop down to the food that holds it; nothing for what is worked out."""
