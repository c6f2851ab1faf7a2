"""A number to say before working out, and the line it is laid on."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.present.views.number import Number


@dataclass(frozen=True, slots=True)
class EstimateView:
    """An estimate of one gap; it is never right or wrong."""

    id: str
    """Its address on the page, and what it is kept under: ``lunch--estimate``."""
    prompt: Markup
    choices: tuple[Number, ...]
    """Nothing where any number may be said."""
    unit: str
    line: Markup
    """From 0 to beyond every number of the row, with marks that the script lays on it."""
    end: str
    """The last number of the line, as a machine writes it."""
    gap: str
    """The gap, as a machine writes it."""
    row: str
    """Address of the form that finds it."""
    sensible: str
    """``410 − 90 ≈ 400 − 100 = 300``, for key and notes."""
