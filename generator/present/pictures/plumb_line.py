"""How the plumb line of a day hangs: which way, and how far."""

from __future__ import annotations

from fractions import Fraction

from generator.compute.rounding import to_places
from generator.present.words.say import digits

STEEPEST = 30
"""Degrees the plumb line leans at most; it hangs there when one side is a third more, or less, than the other."""


def plumb_tilt(ratio: Fraction) -> str:
    """Degrees clockwise of the plumb line for gave ÷ took, to a tenth; clockwise is to the left.

    It hangs to the left where the day gave more, straight at 1, and never leans more than
    ``STEEPEST``. The lean grows with the difference, so that a day about even looks about even.
    """
    steepest = Fraction(STEEPEST)
    degrees = max(-steepest, min(steepest, (ratio - 1) * 3 * steepest))
    return digits(to_places(degrees, 1))
