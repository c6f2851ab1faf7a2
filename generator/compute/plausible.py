"""Whether a value can be true at all: what no food can exceed, and energy against its parts."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from generator.compute.label import label_value
from generator.model.measure import Measure

TOLERANCE = Fraction(20, 100)
"""How far energy may lie from its 4-4-9 sum before it is worth a look. The printed values use
factors of each food, so some difference is right; the share is that of 21 CFR 101.9(g)."""


def atwater_sum(protein: Decimal, carbohydrate: Decimal, fat: Decimal) -> Decimal:
    """Energy in kcal of the three, in grams, by the general factors 4, 4 and 9.

    Carbohydrate by difference may come out a little below zero; it gives no energy then.

    Raises:
        ValueError: protein or fat is negative.

    Source: 21 CFR 101.9(c)(1)(i).
    """
    if min(protein, fat) < 0:
        raise ValueError("a food cannot hold less than nothing")
    return 4 * protein + 4 * max(carbohydrate, Decimal(0)) + 9 * fat


def off_by(energy: Decimal, parts: Decimal) -> Fraction:
    """How far energy lies from its 4-4-9 sum, as a share of the sum; above zero where it is more.

    Raises:
        ValueError: the sum is zero while there is energy: the parts explain none of it.
    """
    if parts == 0:
        if energy:
            raise ValueError(f"{energy} kcal cannot come from nothing")
        return Fraction(0)
    return Fraction(energy - parts) / Fraction(parts)


def most_possible(measure: Measure, grams: Fraction) -> Fraction:
    """The most that a food of this weight can hold, in the measure's unit.

    A label that rounds up stays possible: 14 g of oil may say 130 kcal.

    Raises:
        ValueError: the weight is not above zero.
    """
    if grams <= 0:
        raise ValueError(f"a food cannot weigh {grams} g")
    most = grams * measure.entry.most.in_one_gram
    return max(most, Fraction(label_value(measure, most).value))


def two_days_worth(measure: Measure) -> Decimal | None:
    """Twice the Daily Value (energy: twice the reference diet), in the measure's unit, if it has one.

    One item above this is worth a second look where its weight is not known. The bound is ours.
    """
    day = measure.entry.day
    return None if day is None else 2 * day
