"""Shares of the Daily Value are read as FDA reads them, at their edges."""

from __future__ import annotations

from fractions import Fraction

import pytest

from generator.compute.daily_values import Share, percent_of_daily_value, share
from generator.model.measure import Measure


@pytest.mark.parametrize(
    ("measure", "amount", "percent"),
    [
        # 21 CFR 101.9(c)(8)(iv), (c)(9) [S]: the whole value is 100 %
        (Measure.SATURATED_FAT, "20", 100),
        (Measure.SODIUM, "2300", 100),
        (Measure.SUGARS, "50", 100),
        (Measure.FIBER, "28", 100),
        (Measure.PROTEIN, "50", 100),
        # 101.9(d)(7)(ii) [S]: the nearest whole percent; a tie goes up, our reading
        (Measure.SODIUM, "126.4", 5),  # 5.4957 %
        (Measure.SODIUM, "126.5", 6),  # 5.5 %
        (Measure.SATURATED_FAT, "3.89", 19),  # 19.45 %
        (Measure.SATURATED_FAT, "3.9", 20),  # 19.5 %
        (Measure.SUGARS, "0", 0),
        # references of 101.9(c)(8)(iv): calcium, iron, potassium [S], vitamin C [M]
        (Measure.CALCIUM, "1300", 100),
        (Measure.IRON, "18", 100),
        (Measure.POTASSIUM, "4700", 100),
        (Measure.VITAMIN_C, "90", 100),
        # The regulation's own example, (d)(8) [S]: 235 mg of potassium, 5.0 %, is shown as 6 %
        (Measure.POTASSIUM, "235", 6),
        # (c)(8)(iii) [S]: by 2 up to 10 %, by 5 up to 50 %, by 10 above; ties [C]
        (Measure.CALCIUM, "12.9", 0),  # 0.99 %
        (Measure.CALCIUM, "13", 2),  # 1 %
        (Measure.IRON, "1.8", 10),
        (Measure.IRON, "2.24", 10),  # 12.4 %
        (Measure.IRON, "2.25", 15),  # 12.5 %
        (Measure.VITAMIN_C, "45", 50),
        (Measure.VITAMIN_C, "49.4", 50),  # 54.9 %
        (Measure.VITAMIN_C, "49.5", 60),  # 55 %
        # Sodium is a mineral with whole percents all the same, (c)(9) and (d)(7)(ii) [S]
        (Measure.SODIUM, "161", 7),
    ],
)
def test_percent(measure: Measure, amount: str, percent: int) -> None:
    assert percent_of_daily_value(measure, Fraction(amount)) == percent


@pytest.mark.parametrize(
    ("percent", "expected"),
    # FDA consumer guidance [S]: 5 % or less is low, 20 % or more is high
    [
        (0, Share.LOW),
        (5, Share.LOW),
        (6, Share.BETWEEN),
        (19, Share.BETWEEN),
        (20, Share.HIGH),
        (125, Share.HIGH),
    ],
)
def test_share(percent: int, expected: Share) -> None:
    assert share(percent) is expected


def test_energy_has_no_daily_value() -> None:
    with pytest.raises(ValueError, match="energy has no Daily Value"):
        percent_of_daily_value(Measure.ENERGY, Fraction(100))


def test_negative_amounts_are_refused() -> None:
    with pytest.raises(ValueError, match="cannot hold"):
        percent_of_daily_value(Measure.SODIUM, Fraction(-1))
