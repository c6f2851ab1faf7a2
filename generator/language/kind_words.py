"""Words that make food a matter of guilt, or movement its price.

The rule of the *Care* promise; AAP 2016 (Golden and others, Pediatrics
138(3):e20161649) asks for talk about health, not about weight.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class UnkindWords:
    """Words to look for, and what to say instead."""

    pattern: str
    """Alternatives of a regular expression; looked for as whole words, whatever their case."""
    instead: str
    """What to say instead."""
    of_bodies: bool = False
    """Whether they speak of bodies; else of guilt or payment."""
