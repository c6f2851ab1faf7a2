"""Whether a value can be true at all: what no food can exceed, and energy against its parts."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from generator.compute.daily_values import DAILY_VALUES
from generator.compute.label import label_value
from generator.model.measure import Measure

MOST_KCAL_IN_100_G = 902
"""Pure lard, the densest record of SR Legacy (FDC 171401). The general Atwater factor for fat gives
900 (21 CFR 101.9(c)(1)(i)); animal fats have a factor of their own, 9.02 kcal/g."""

SODIUM_IN_SALT = Fraction(2299, 5844)
"""Share of sodium in table salt by weight, from the atomic weights 22.99 and 35.45; no food is saltier than salt."""

TOLERANCE = Fraction(20, 100)
"""How far energy may lie from its 4-4-9 sum before it is worth a look. The printed values use
factors of each food, so some difference is right; the share is that of 21 CFR 101.9(g)."""

REFERENCE_KCAL = Decimal(2000)
"""The label's reference diet for a day, kcal (from memory: 21 CFR 101.9(c)(9))."""


def atwater_sum(protein: Decimal, carbohydrate: Decimal, fat: Decimal) -> Decimal:
    """Energy in kcal of the three, in grams, by the general factors 4, 4 and 9.

    Raises:
        ValueError: an amount is negative.

    Source: 21 CFR 101.9(c)(1)(i).
    """
    if min(protein, carbohydrate, fat) < 0:
        raise ValueError("a food cannot hold less than nothing")
    return 4 * protein + 4 * carbohydrate + 9 * fat


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

    Energy is that of pure fat, sodium that of pure salt; sugars, saturated fat, fiber and
    protein cannot weigh more than the food. A label that rounds up stays possible: 14 g of oil
    may say 130 kcal.

    Raises:
        ValueError: the weight is not above zero.
    """
    if grams <= 0:
        raise ValueError(f"a food cannot weigh {grams} g")
    most = _most(measure, grams)
    return max(most, Fraction(label_value(measure, most).value))


def _most(measure: Measure, grams: Fraction) -> Fraction:
    match measure:
        case Measure.ENERGY:
            return grams * MOST_KCAL_IN_100_G / 100
        case Measure.SODIUM:
            return grams * 1000 * SODIUM_IN_SALT
        case Measure.SUGARS | Measure.SATURATED_FAT | Measure.FIBER | Measure.PROTEIN:
            return grams


def two_days_worth(measure: Measure) -> Decimal:
    """Twice the Daily Value (energy: twice the reference diet), in the measure's unit.

    One item above this is worth a second look where its weight is not known. The bound is ours.
    """
    return 2 * DAILY_VALUES.get(measure, REFERENCE_KCAL)
