"""Daily Values of the United States food label, and what share of one a portion holds."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from generator.compute.label import to_step
from generator.model.measure import Measure

DAILY_VALUES: dict[Measure, Decimal] = {
    Measure.SATURATED_FAT: Decimal(20),
    Measure.SODIUM: Decimal(2300),
    Measure.SUGARS: Decimal(50),
    Measure.FIBER: Decimal(28),
    Measure.PROTEIN: Decimal(50),
}
"""Adults and children of 4 years and more, in each measure's unit (g; sodium mg).

Source: 21 CFR 101.9(c)(8)(iv) and (c)(9). The value for sugars is that of *added* sugars: total
sugars have none. Energy has none either; 2,000 kcal is the label's reference diet.
"""


class Share(StrEnum):
    """How much of the Daily Value a portion holds."""

    LOW = "low"
    """5 % or less."""
    BETWEEN = "between"
    """6 to 19 %."""
    HIGH = "high"
    """20 % or more."""


def percent_of_daily_value(measure: Measure, amount: Fraction) -> int:
    """Percent of the Daily Value, as a label prints it: the nearest whole percent, half goes up.

    Args:
        measure: one that has a Daily Value; for sugars the amount is taken as added sugars.
        amount: what the portion holds before rounding, in the measure's unit, not negative.

    Raises:
        ValueError: the measure has no Daily Value, or the amount is negative.

    Source: 21 CFR 101.9(d)(7)(ii); it allows the amount before rounding.
    """
    if measure not in DAILY_VALUES:
        raise ValueError(f"{measure} has no Daily Value")
    if amount < 0:
        raise ValueError(f"a portion cannot hold {amount} {measure.unit}")
    return int(to_step(100 * amount / Fraction(DAILY_VALUES[measure]), Decimal(1)))


def share(percent: int) -> Share:
    """What the printed percent means: 5 % or less is low, 20 % or more is high.

    Source: FDA consumer guidance on the Nutrition Facts label.
    """
    if percent <= 5:
        return Share.LOW
    return Share.HIGH if percent >= 20 else Share.BETWEEN
