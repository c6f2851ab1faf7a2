"""Values as a United States food label shows them: 21 CFR 101.9(c).

This is the one place that decides what happens to a tie. The rule's text is silent about a
value exactly between two steps; half is rounded up here, as most label software and every
schoolbook do. All arithmetic is on exact fractions, so a tie is a tie and no accident of
binary numbers.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from math import floor

from generator.model.measure import Measure


@dataclass(frozen=True, slots=True)
class Shown:
    """A value as a child sees it, with the rule that made it."""

    value: Decimal
    """In the measure's unit."""
    exact: Fraction
    """The value before rounding, in the same unit."""
    rule: str
    """Paragraph of 21 CFR 101.9 and what it says for this value."""


def label_value(measure: Measure, exact: Fraction) -> Shown:
    """Round a value of one portion as 21 CFR 101.9(c) has it.

    Args:
        measure: what the value is of; it brings the unit.
        exact: the value, not negative.

    Raises:
        ValueError: the value is negative.
    """
    if exact < 0:
        raise ValueError(f"a food cannot hold {exact} {measure.unit}")
    step, paragraph = _step(measure, exact)
    if step is None:
        return Shown(Decimal(0), exact, paragraph)
    return Shown(to_step(exact, step), exact, paragraph)


def to_step(exact: Fraction, step: Decimal) -> Decimal:
    """The nearest multiple of a step; half a step goes up."""
    steps = floor(exact / Fraction(step) + Fraction(1, 2))
    return step * steps


def _step(measure: Measure, exact: Fraction) -> tuple[Decimal | None, str]:
    """The step a value is rounded to and its rule; no step where the rule shows zero."""
    match measure:
        case Measure.ENERGY:
            return _energy(exact)
        case Measure.SODIUM:
            return _sodium(exact)
        case Measure.SATURATED_FAT:
            return _fat(exact)
        case Measure.SUGARS | Measure.FIBER:
            return _gram(exact, "(c)(6)")
        case Measure.PROTEIN:
            return _gram(exact, "(c)(7)")


def _energy(exact: Fraction) -> tuple[Decimal | None, str]:
    if exact < 5:
        return None, "(c)(1): under 5 kcal is shown as 0"  # the rule says "may"; ours always does
    if exact <= 50:
        return Decimal(5), "(c)(1): to the nearest 5 kcal up to 50"
    return Decimal(10), "(c)(1): to the nearest 10 kcal above 50"


def _sodium(exact: Fraction) -> tuple[Decimal | None, str]:
    if exact < 5:
        return None, "(c)(4): under 5 mg is shown as 0"
    if exact <= 140:
        return Decimal(5), "(c)(4): to the nearest 5 mg up to 140"
    return Decimal(10), "(c)(4): to the nearest 10 mg above 140"


def _fat(exact: Fraction) -> tuple[Decimal | None, str]:
    if exact < Fraction(1, 2):
        return None, "(c)(2): under 0.5 g is shown as 0"
    if exact < 5:
        return Decimal("0.5"), "(c)(2): to the nearest 0.5 g below 5"
    return Decimal(1), "(c)(2): to the nearest 1 g from 5"


def _gram(exact: Fraction, paragraph: str) -> tuple[Decimal | None, str]:
    if exact < Fraction(1, 2):
        return None, f"{paragraph}: under 0.5 g is shown as 0"
    return Decimal(1), f"{paragraph}: to the nearest 1 g"
