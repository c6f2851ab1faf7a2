"""What share of a Daily Value of the United States food label a portion holds."""

from __future__ import annotations

from enum import StrEnum
from fractions import Fraction

from generator.compute.rounding import to_step
from generator.model.measure import Measure


class Share(StrEnum):
    """How much of the Daily Value a portion holds."""

    LOW = "low"
    """5 % or less."""
    BETWEEN = "between"
    """6 to 19 %."""
    HIGH = "high"
    """20 % or more."""


def percent_of_daily_value(measure: Measure, amount: Fraction) -> int:
    """Percent of the Daily Value, as a label prints it; half a step goes up.

    Args:
        measure: one that has a Daily Value; for sugars the amount is taken as added sugars.
        amount: what the portion holds before rounding, in the measure's unit, not negative.

    Raises:
        ValueError: the measure has no Daily Value, or the amount is negative.

    Source: 21 CFR 101.9(d)(7)(ii), to the nearest whole percent; it allows the amount before
    rounding. Vitamins and minerals other than sodium go by the steps of (c)(8)(iii).
    """
    daily_value = measure.entry.daily_value
    if daily_value is None:
        raise ValueError(f"{measure} has no Daily Value")
    if amount < 0:
        raise ValueError(f"a portion cannot hold {amount} {measure.unit}")
    percent = 100 * amount / Fraction(daily_value)
    step = next(step for step in measure.entry.percent_steps if step.serves(percent))
    return int(to_step(percent, step.size))


def share(percent: int) -> Share:
    """What the printed percent means: 5 % or less is low, 20 % or more is high.

    Source: FDA consumer guidance on the Nutrition Facts label.
    """
    if percent <= 5:
        return Share.LOW
    return Share.HIGH if percent >= 20 else Share.BETWEEN
