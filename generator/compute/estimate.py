"""What a sensible estimate of a gap rounds to, and the line that estimates are laid on."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_CEILING, Decimal
from fractions import Fraction

from generator.compute.gap import Gap
from generator.compute.rounding import to_step

_TENS_FROM, _HUNDREDS_FROM, _THOUSANDS_FROM = 10, 100, 10_000
_MOST_TICKS, _MOST_OF_THOUSANDS = 8, 5
"""Steps from 0 to the end of the line; with more of them its numbers would touch on a small phone."""


@dataclass(frozen=True, slots=True)
class Rounded:
    """Both numbers of a gap rounded to one place, as 3.NBT.A.1 of the Common Core State Standards has it."""

    larger: Decimal
    """In the measure's unit."""
    smaller: Decimal
    """In the same unit."""
    step: Decimal
    """Rounded to the nearest ten, hundred …"""

    @property
    def gap(self) -> Decimal:
        """About how far apart both are."""
        return self.larger - self.smaller


def rounded(gap: Gap) -> Rounded:
    """410 and 90 as 400 and 100: to hundreds from 100 on, to tens from 10, to thousands from 10,000.

    A half goes up. The places are ours: common practice, no source.
    """
    step = Decimal(
        1000
        if gap.larger >= _THOUSANDS_FROM
        else 100
        if gap.larger >= _HUNDREDS_FROM
        else 10
        if gap.larger >= _TENS_FROM
        else 1
    )
    larger, smaller = (to_step(Fraction(one), step) for one in (gap.larger, gap.smaller))
    return Rounded(larger, smaller, step)


@dataclass(frozen=True, slots=True)
class Line:
    """A number line from 0, with room for every estimate that makes sense."""

    step: Decimal
    """From one tick to the next."""
    end: Decimal
    """Its last tick."""

    @property
    def ticks(self) -> tuple[Decimal, ...]:
        """0, then every step up to the end."""
        return tuple(self.step * number for number in range(int(self.end / self.step) + 1))


def line_for(largest: Decimal) -> Line:
    """The line up to the first round number that is no smaller than a number above zero."""
    most = _MOST_OF_THOUSANDS if largest >= 1000 else _MOST_TICKS
    size = Decimal(1)
    while True:
        for one in (size, size * 2, size * 5):
            steps = int((largest / one).to_integral_value(ROUND_CEILING))
            if steps <= most:
                return Line(one, one * max(1, steps))
        size *= 10
