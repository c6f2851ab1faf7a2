"""How much energy an invented person needs in a day."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.compute.reference_bodies import Body
from generator.model.stops.day import ActivityLevel, Sex


@dataclass(frozen=True, slots=True)
class EnergyNeed:
    """An estimated energy requirement, with its parts for the trace."""

    spent: Decimal
    """Total energy expenditure by the equation, kcal a day, exact."""
    growth: Decimal
    """Energy cost of growth, kcal a day; 0 for adults."""
    equation: str
    """The equation with its numbers filled in."""

    @property
    def total(self) -> Decimal:
        """The estimated energy requirement, kcal a day, exact."""
        return self.spent + self.growth


_LEVELS = tuple(ActivityLevel)
_EQUATIONS = {
    (
        Sex.BOY,
        False,
    ): "-447.51 3.68 13.01 13.15 | 19.12 3.68 8.62 20.28 | -388.19 3.68 12.66 20.46 | -671.75 3.68 15.38 23.25",
    (
        Sex.GIRL,
        False,
    ): "55.59 -22.25 8.43 17.07 | -297.54 -22.25 12.77 14.73 | -189.55 -22.25 11.74 18.34 | -709.59 -22.25 18.22 14.25",
    (
        Sex.BOY,
        True,
    ): "753.07 -10.83 6.50 14.10 | 581.47 -10.83 8.30 14.94 | 1004.82 -10.83 6.52 15.91 | -517.88 -10.83 15.61 19.11",
    (
        Sex.GIRL,
        True,
    ): "584.90 -7.01 5.72 11.71 | 575.77 -7.01 6.60 12.14 | 710.25 -7.01 6.54 12.34 | 511.83 -7.01 9.07 12.56",
}
"""By sex and whether 19 or older: constant, then the factors of age (years), height (cm) and
weight (kg), for each activity level. NASEM 2023, Tables 5-8 and 5-12 and summary Table S-1."""

_GROWTH = ((14, 20, 20), (9, 25, 30), (4, 15, 15), (3, 20, 15))
"""From an age on: boys' and girls' energy cost of growth, kcal a day. NASEM 2023, Table 5-5.
Beware of copies that give girls of 9 to 13 years 15 kcal: the table has 30."""


def energy_need(
    sex: Sex, age_years: Decimal | int, body: Body, activity: ActivityLevel
) -> EnergyNeed:
    """Estimated energy requirement in kcal a day: expenditure, and for a child the cost of growth.

    Args:
        sex: boys and men, or girls and women.
        age_years: 3 or more; 3 to under 19 have the children's equations.
        body: height in cm, weight in kg.
        activity: one of the four levels of Table 5-4.

    Raises:
        ValueError: the age is under 3, where other equations hold.

    Source: NASEM 2023, Dietary Reference Intakes for Energy, DOI 10.17226/26818.
    """
    _refuse_under_three(age_years)
    written = _EQUATIONS[sex, age_years >= 19].split("|")[_LEVELS.index(activity)]
    constant, by_age, by_height, by_weight = map(Decimal, written.split())
    spent = constant + by_age * age_years + by_height * body.height_cm + by_weight * body.weight_kg
    equation = (
        f"{constant} + {by_age} × {age_years} + {by_height} × {body.height_cm} + {by_weight} × {body.weight_kg}"
    ).replace("+ -", "− ")
    return EnergyNeed(spent, growth_cost(sex, age_years), equation.replace("-", "−"))


def growth_cost(sex: Sex, age_years: Decimal | int) -> Decimal:
    """Energy cost of growth in kcal a day; 0 from 19 years.

    Raises:
        ValueError: the age is under 3.

    Source: NASEM 2023, Table 5-5.
    """
    _refuse_under_three(age_years)
    if age_years >= 19:
        return Decimal(0)
    boys, girls = next((b, g) for youngest, b, g in _GROWTH if age_years >= youngest)
    return Decimal(boys if sex is Sex.BOY else girls)


def _refuse_under_three(age_years: Decimal | int) -> None:
    if age_years < 3:
        raise ValueError(f"the energy equations begin at 3 years, not at {age_years}")
