"""What a phrase claims about two numbers, and how exactly it has to be true."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from generator.language.form import Form, Leeway

BOUNDS: dict[Leeway, tuple[Fraction | None, Fraction | None]] = {
    Leeway.PLAIN: (Fraction(95, 100), Fraction(105, 100)),
    Leeway.ALMOST: (Fraction(85, 100), Fraction(1)),
    Leeway.ABOUT: (Fraction(90, 100), Fraction(110, 100)),
    Leeway.OVER: (Fraction(1), None),
    Leeway.UNDER: (None, Fraction(1)),
    Leeway.BARELY: (Fraction(80, 100), Fraction(105, 100)),
    Leeway.AT_LEAST: (Fraction(999, 1000), None),
    Leeway.AT_MOST: (None, Fraction(1001, 1000)),
}
"""Lowest and highest true number, as shares of the number said. Ours, no source.

``double`` is 1.9 to 2.1, ``almost double`` 1.7 to below 2, ``more than double`` above 2, ``about
the same`` within 10 %. Ends are meant, except 1: *almost*, *over* and *under* are never *equal*.
"""


@dataclass(frozen=True, slots=True)
class Claim:
    """A phrase read as a claim."""

    form: Form
    """What kind of claim it is."""
    leeway: Leeway
    """How exactly it is meant."""
    number: Fraction
    """Times, share, gap or rows said; 1 where the form has no number, negative for *less*."""
    text: str
    """The phrase, as written."""
    start: int
    """Where it begins in its sentence."""
    end: int
    """Where it ends in its sentence."""
    negated: bool = False
    """Whether the sentence says that it is not so: *does not hold twice as much*."""
    both: bool = False
    """Whether it is a claim only where two foods or sides are named."""


def within(leeway: Leeway, said: Fraction, true: Fraction) -> bool:
    """Whether a true number is near enough to the one said, by ``BOUNDS``."""
    lowest, highest = BOUNDS[leeway]
    above = lowest is None or (true > said if lowest == 1 else true >= lowest * said)
    below = highest is None or (true < said if highest == 1 else true <= highest * said)
    return above and below
