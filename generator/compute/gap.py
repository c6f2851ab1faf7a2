"""The gap between two values: how much more one side holds, and which side."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Gap:
    """Two shown values and what lies between them."""

    first: Decimal
    """Shown value of the first side, in the measure's unit."""
    second: Decimal
    """Shown value of the second side."""
    exact: Fraction
    """The gap before any rounding, first minus second; kept for the trace only."""

    @property
    def size(self) -> Decimal:
        """The gap a child finds by subtracting; never negative."""
        return abs(self.first - self.second)

    @property
    def holder(self) -> int | None:
        """Which side holds more: 0, 1, or neither."""
        if self.first == self.second:
            return None
        return 0 if self.first > self.second else 1

    @property
    def larger(self) -> Decimal:
        """The value subtracted from."""
        return max(self.first, self.second)

    @property
    def smaller(self) -> Decimal:
        """The value subtracted."""
        return min(self.first, self.second)


def total_gap(gaps: tuple[Gap, ...]) -> Gap:
    """The gap between the totals of both sides; totals are sums of shown values."""
    first = sum((gap.first for gap in gaps), Decimal(0))
    second = sum((gap.second for gap in gaps), Decimal(0))
    return Gap(first, second, sum((gap.exact for gap in gaps), Fraction(0)))
