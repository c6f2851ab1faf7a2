"""Published heights and weights, so that nobody's own is ever asked for or shown."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.model.stops.day import Sex


@dataclass(frozen=True, slots=True)
class Body:
    """A reference body, nobody's own."""

    height_cm: Decimal
    """Stature, cm."""
    weight_kg: Decimal
    """Weight, kg."""


REFERENCE_ADULTS = {
    Sex.FEMALE: Body(Decimal(163), Decimal(57)),
    Sex.MALE: Body(Decimal(177), Decimal(70)),
}
"""Reference woman and man, for the trace alone.

Source: IOM 2005, Dietary Reference Intakes for Energy, reference heights and weights of 19 to 30
years. The man's are read beside his published requirement; the woman's are from memory, and
reproduce hers.
"""

_AGES = (*range(4, 19), 20)
_WEIGHTS = {
    Sex.MALE: "16.32 18.49 20.78 23.17 25.75 28.68 32.09 36.07 40.67 45.81 51.23 56.49 61.10 64.70 67.29 70.60",
    Sex.FEMALE: "15.88 18.02 20.34 22.87 25.76 29.14 33.06 37.39 41.83 45.98 49.49 52.14 53.95 55.18 56.23 58.22",
}
"""Median weight-for-age, kg, at 4 to 18 and at 20 years."""

_KG = {
    (sex, age): Decimal(weight)
    for sex, weights in _WEIGHTS.items()
    for age, weight in zip(_AGES, weights.split(), strict=True)
}


def reference_weight(sex: Sex, age_years: int) -> Decimal:
    """Median weight in kg, half a month after the birthday; kept for 4 to 18 and for 20 years.

    For the minutes in the teaching notes, which are for adults; no page a learner sees has it.

    Raises:
        ValueError: no weight is kept for the age.

    Source: CDC 2000 growth charts, LMS file wtage.csv, column M.
    """
    if (sex, age_years) not in _KG:
        raise ValueError(f"no reference weight is kept for {age_years} years")
    return _KG[sex, age_years]
