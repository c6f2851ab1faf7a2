"""Wilson's score interval: between which shares the true one lies, in 95 of 100 samples like this one.

As in Newcombe 1998, Statistics in Medicine 17:857-872, method 3 (from memory, status M).
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Context, Decimal

Z = Decimal("1.959964")
"""Of a normal distribution, 95 of 100 lie within it to both sides."""
_EXACT = Context(prec=28)


@dataclass(frozen=True, slots=True)
class Interval:
    """Two shares, 0 to 1."""

    low: Decimal
    """Where it begins."""
    high: Decimal
    """Where it ends."""


def wilson(count: int, of: int) -> Interval:
    """The interval of a share.

    Args:
        count: of so many it is true.
        of: how many there are, at least one.
    """
    with_z = _EXACT.multiply(Z, Z)
    share, number = _EXACT.divide(Decimal(count), Decimal(of)), Decimal(of)
    middle = share + with_z / (2 * number)
    wide = Z * _EXACT.sqrt(share * (1 - share) / number + with_z / (4 * number * number))
    whole = 1 + with_z / number
    low, high = (middle - wide) / whole, (middle + wide) / whole
    return Interval(Decimal(0) if count == 0 else low, Decimal(1) if count == of else high)
