"""Counting up from one number to another, hop by hop, as a child does on a number line."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_CEILING, Decimal
from itertools import pairwise

_UP = (Decimal(1), Decimal(10), Decimal(100))
"""Round numbers to reach first: whole, tens, hundreds."""
_ON = (Decimal(100), Decimal(10), Decimal(1))
"""What is counted from there: hundreds, then tens, then ones."""


@dataclass(frozen=True, slots=True)
class Hop:
    """One hop along the number line."""

    start: Decimal
    """Where it begins, in the unit of the gap."""
    end: Decimal
    """Where it lands, in the same unit."""

    @property
    def size(self) -> Decimal:
        """How far it goes; above zero."""
        return self.end - self.start


def count_up(smaller: Decimal, larger: Decimal) -> tuple[Hop, ...]:
    """The hops from the smaller to the larger number; none where both are the same.

    To the next ten, to the next hundred, then hundreds, tens and what is left: common practice
    with an open number line, no source.

    Raises:
        ValueError: the smaller number is the larger, or below zero.
    """
    if not 0 <= smaller <= larger:
        raise ValueError(f"there is no counting up from {smaller} to {larger}")
    stops = [smaller]
    for step in _UP:
        above = (stops[-1] / step).to_integral_value(ROUND_CEILING) * step
        if above <= larger:
            stops.append(above)
    stops += [larger // step * step for step in _ON]  # below the smaller one where it is near
    ordered = sorted(stop for stop in {*stops, larger} if stop >= smaller)
    return tuple(Hop(start, end) for start, end in pairwise(ordered))
