"""A number as a page shows it, and as a script reads it."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Number:
    """One number in its two spellings, so that neither is taken for the other."""

    text: str
    """As the page's language writes it, with its unit where it has one."""
    machine: str
    """Digits and a point."""
