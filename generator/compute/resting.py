"""Resting energy: what a body of an age, sex and weight uses in a day without moving."""

from __future__ import annotations

from decimal import Decimal

from generator.model.stops.day import Sex

_BANDS: tuple[tuple[int, dict[Sex, tuple[Decimal, Decimal]]], ...] = (
    (
        60,
        {
            Sex.MALE: (Decimal("11.711"), Decimal("587.7")),
            Sex.FEMALE: (Decimal("9.082"), Decimal("658.5")),
        },
    ),
    (
        30,
        {
            Sex.MALE: (Decimal("11.472"), Decimal("873.1")),
            Sex.FEMALE: (Decimal("8.126"), Decimal("845.6")),
        },
    ),
    (
        18,
        {
            Sex.MALE: (Decimal("15.057"), Decimal("692.2")),
            Sex.FEMALE: (Decimal("14.818"), Decimal("486.6")),
        },
    ),
    (
        10,
        {
            Sex.MALE: (Decimal("17.686"), Decimal("658.2")),
            Sex.FEMALE: (Decimal("13.384"), Decimal("692.6")),
        },
    ),
    (
        3,
        {
            Sex.MALE: (Decimal("22.706"), Decimal("504.3")),
            Sex.FEMALE: (Decimal("20.315"), Decimal("485.9")),
        },
    ),
)
"""First year of life a band holds for, and its slope (kcal/day for a kg) and constant (kcal/day)."""


def resting_energy(sex: Sex, age_years: Decimal | int, weight_kg: Decimal) -> Decimal:
    """Basal metabolic rate from weight alone, in kcal a day, exact.

    The printed bands overlap at 10, 18, 30 and 60 years. Here each begins on the birthday: a
    child of exactly 10 has the row of 10 to 18. FAO's rounded constants of 1985 are other ones.

    Args:
        sex: boys and men, or girls and women.
        age_years: completed years or finer, 3 or more; no lesson is about a younger child.
        weight_kg: body weight, kg.

    Raises:
        ValueError: the age is under 3, or the weight is not above zero.

    Source: Schofield WN 1985, Hum Nutr Clin Nutr 39 Suppl 1:5-41, weight-only equations.
    """
    slope, constant = _row(sex, age_years)
    if weight_kg <= 0:
        raise ValueError(f"a body cannot weigh {weight_kg} kg")
    return slope * weight_kg + constant


def resting_equation(sex: Sex, age_years: Decimal | int, weight_kg: Decimal) -> str:
    """The same with its numbers filled in: ``22.706 × 28.68 + 504.3``.

    Raises:
        ValueError: the age is under 3.
    """
    slope, constant = _row(sex, age_years)
    return f"{slope} × {weight_kg} + {constant}"


def _row(sex: Sex, age_years: Decimal | int) -> tuple[Decimal, Decimal]:
    """Slope and constant of an age."""
    for youngest, rows in _BANDS:
        if age_years >= youngest:
            return rows[sex]
    raise ValueError(f"resting energy is worked out from 3 years on, not at {age_years}")
