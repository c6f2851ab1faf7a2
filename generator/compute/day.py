"""An invented adult's day: what it gave beside what it took, and which way it leans."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from generator.compute.gap import Gap
from generator.compute.rounding import to_step

ABOUT_EVEN = Fraction(1, 10)
"""A day is about even when what it gave lies within this share of what it took, both ends meant.

Ours, no source. It is kept wide because the equations are: the published standard errors of
NASEM 2023, Table 5-8 are 221 to 342 kcal, about 12 % of the printed values.
"""


class Lean(StrEnum):
    """Which way a day leans."""

    EATEN = "eaten"
    """The day gave more than it took."""
    EVEN = "even"
    """The day gave about as much as it took."""
    NEEDED = "needed"
    """The day took more than it gave."""


@dataclass(frozen=True, slots=True)
class DayBalance:
    """Two numbers a learner compares; both are shown, so a subtraction on paper comes out right."""

    eaten: Decimal
    """What the day gave: the sum of the shown kcal of all foods."""
    needed: Decimal
    """What the day took: an estimated energy requirement, shown to the nearest 10 kcal."""

    @property
    def both(self) -> Gap:
        """What the day gave as the first side, and what it took as the second, kcal."""
        return Gap(self.eaten, self.needed, Fraction(self.eaten - self.needed))

    @property
    def gap(self) -> Decimal:
        """What lies between the two, kcal; never negative."""
        return self.both.size

    @property
    def even_within(self) -> Decimal:
        """The largest gap, in kcal, of a day that is about even; whole, for ``needed`` is in tens."""
        return self.needed * ABOUT_EVEN.numerator / ABOUT_EVEN.denominator

    @property
    def ratio(self) -> Fraction:
        """Gave ÷ took; the plumb line leans by it, and hangs straight at 1."""
        return Fraction(self.eaten) / Fraction(self.needed)

    @property
    def lean(self) -> Lean:
        """Which way the day leans, with ``ABOUT_EVEN`` on both sides of 1."""
        if abs(self.ratio - 1) <= ABOUT_EVEN:
            return Lean.EVEN
        return Lean.EATEN if self.ratio > 1 else Lean.NEEDED


def day_balance(shown_kcal: Iterable[Decimal], need_kcal: Decimal) -> DayBalance:
    """Put what a day gave beside what it took.

    Args:
        shown_kcal: label-rounded energy of each food eaten, kcal.
        need_kcal: estimated energy requirement before rounding, kcal a day; it is shown to the
            nearest 10 kcal like energy on a label, half goes up (21 CFR 101.9(c)(1)).

    Raises:
        ValueError: a food's energy is negative, or the need is not above 5 kcal.
    """
    foods = tuple(shown_kcal)
    if any(kcal < 0 for kcal in foods):
        raise ValueError("a food cannot hold less than no energy")
    needed = to_step(Fraction(need_kcal), Decimal(10))
    if needed <= 0:
        raise ValueError(f"nobody needs {need_kcal} kcal a day")
    return DayBalance(sum(foods, Decimal(0)), needed)
