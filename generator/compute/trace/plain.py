"""An exact number in digits a reader can check."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction


def plain(exact: Fraction) -> str:
    """Decimal digits when there are not too many of them; the fraction itself when they never end."""
    bottom = exact.denominator
    for prime in (2, 5):
        while bottom % prime == 0:
            bottom //= prime
    if bottom != 1:
        return f"{exact.numerator}/{exact.denominator}"
    return f"{(Decimal(exact.numerator) / Decimal(exact.denominator)).normalize():f}"
