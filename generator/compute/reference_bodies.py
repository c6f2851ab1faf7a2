"""Median height and weight of a child by age and sex, so that nobody's own is ever asked for."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.model.stops.day import Sex


@dataclass(frozen=True, slots=True)
class Body:
    """A reference body, no child's own."""

    height_cm: Decimal
    """Median stature, cm."""
    weight_kg: Decimal
    """Median weight, kg."""


_AGES = (*range(4, 19), 20)
_WEIGHTS = {
    Sex.BOY: "16.32 18.49 20.78 23.17 25.75 28.68 32.09 36.07 40.67 45.81 51.23 56.49 61.10 64.70 67.29 70.60",
    Sex.GIRL: "15.88 18.02 20.34 22.87 25.76 29.14 33.06 37.39 41.83 45.98 49.49 52.14 53.95 55.18 56.23 58.22",
}
"""Median weight-for-age, kg, at 4 to 18 and at 20 years."""
_HEIGHT_AGES = range(6, 13)
_HEIGHTS = {
    Sex.BOY: "115.7 122.0 128.1 133.7 138.8 143.7 149.3",
    Sex.GIRL: "115.0 121.8 127.8 133.1 138.2 144.3 151.5",
}
"""Median stature-for-age, cm, at 6 to 12 years."""


def _table(ages: range | tuple[int, ...], rows: dict[Sex, str]) -> dict[tuple[Sex, int], Decimal]:
    return {
        (sex, age): Decimal(value)
        for sex, values in rows.items()
        for age, value in zip(ages, values.split(), strict=True)
    }


_KG, _CM = _table(_AGES, _WEIGHTS), _table(_HEIGHT_AGES, _HEIGHTS)


def reference_weight(sex: Sex, age_years: int) -> Decimal:
    """Median weight in kg, half a month after the birthday; kept for 4 to 18 and for 20 years.

    Raises:
        ValueError: no weight is kept for the age.

    Source: CDC 2000 growth charts, LMS file wtage.csv, column M.
    """
    return _find(_KG, sex, age_years, "weight")


def reference_body(sex: Sex, age_years: int) -> Body:
    """Median height and weight half a month after the birthday; kept for 6 to 12 years.

    Raises:
        ValueError: no height is kept for the age.

    Source: CDC 2000 growth charts, LMS files statage.csv and wtage.csv, column M.
    """
    return Body(_find(_CM, sex, age_years, "height"), reference_weight(sex, age_years))


def _find(table: dict[tuple[Sex, int], Decimal], sex: Sex, age: int, what: str) -> Decimal:
    if (sex, age) not in table:
        raise ValueError(f"no reference {what} is kept for a {sex} of {age} years")
    return table[sex, age]
