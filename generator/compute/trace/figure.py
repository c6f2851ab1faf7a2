"""A shown number, and the steps that lead to it."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Step:
    """One step on the way to a number."""

    what: str
    """``record``, ``portion``, ``amount``, ``rounding``, ``subtraction``, ``sum`` or ``division``."""
    says: str
    """The step in a sentence or as arithmetic."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A shown number."""

    id: str
    """Its address in the lesson: ``lunch.row-1.first``, ``lunch.row-1.gap``, ``move-1.card-1.count``."""
    value: Decimal
    unit: str
    """``kcal``, ``mg``, ``g`` or ``times``."""
    exact: Fraction
    """The value before rounding; the same as ``value`` where nothing was rounded."""
    steps: tuple[Step, ...]
