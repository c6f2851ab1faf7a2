"""How much energy an invented adult's day took; no need is ever worked out for anybody under 19."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.compute.reference_bodies import Body
from generator.model.stops.day import YOUNGEST, ActivityLevel, Sex


@dataclass(frozen=True, slots=True)
class EnergyNeed:
    """An estimated energy requirement, with its equation for the trace."""

    kcal: Decimal
    """kcal a day, exact."""
    equation: str
    """The equation with its numbers filled in."""


_LEVELS = tuple(ActivityLevel)
_EQUATIONS = {
    Sex.MALE: "753.07 -10.83 6.50 14.10 | 581.47 -10.83 8.30 14.94 | 1004.82 -10.83 6.52 15.91 | -517.88 -10.83 15.61 19.11",
    Sex.FEMALE: "584.90 -7.01 5.72 11.71 | 575.77 -7.01 6.60 12.14 | 710.25 -7.01 6.54 12.34 | 511.83 -7.01 9.07 12.56",
}
"""Constant, then the factors of age (years), height (cm) and weight (kg), for each activity level;
19 years and over. NASEM 2023, Tables 5-8 and 5-12 and summary Table S-1."""


def energy_need(
    sex: Sex, age_years: Decimal | int, body: Body, activity: ActivityLevel
) -> EnergyNeed:
    """Estimated energy requirement of an adult, kcal a day.

    Args:
        sex: women or men.
        age_years: 19 or more.
        body: height in cm, weight in kg.
        activity: one of the four levels of Table 5-4.

    Raises:
        ValueError: the age is under 19; what a child needs is shown to nobody.

    Source: NASEM 2023, Dietary Reference Intakes for Energy, DOI 10.17226/26818.
    """
    if age_years < YOUNGEST:
        raise ValueError(f"a day is about an adult of {YOUNGEST} or more years, not of {age_years}")
    written = _EQUATIONS[sex].split("|")[_LEVELS.index(activity)]
    constant, by_age, by_height, by_weight = map(Decimal, written.split())
    kcal = constant + by_age * age_years + by_height * body.height_cm + by_weight * body.weight_kg
    equation = (
        f"{constant} + {by_age} × {age_years} + {by_height} × {body.height_cm} + {by_weight} × {body.weight_kg}"
    ).replace("+ -", "− ")
    return EnergyNeed(kcal, equation.replace("-", "−"))
