"""The one place that decides what happens to a number exactly between two others.

Half a step goes up (below zero: down), as most label software and every schoolbook have it; the
text of 21 CFR 101.9 is silent about it. Python's own ``round`` sends half of the ties the other
way, so it is used nowhere. Fractions are exact: a tie is a tie and no accident of binary numbers.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from math import floor


def to_step(exact: Fraction, step: Decimal) -> Decimal:
    """The nearest multiple of a step; half a step goes away from zero."""
    steps = floor(abs(exact) / Fraction(step) + Fraction(1, 2))
    return step * (-steps if exact < 0 else steps)


def to_places(exact: Fraction, places: int) -> Decimal:
    """To so many decimal places, zeros kept: ``0.50``."""
    return to_step(exact, Decimal(1).scaleb(-places))


def whole(exact: Fraction) -> int:
    """The nearest whole number; a half goes away from zero."""
    return int(to_step(exact, Decimal(1)))
