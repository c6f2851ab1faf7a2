"""Minutes of a move whose energy above rest equals a gap: for the teaching notes, never for a learner."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.reference_bodies import reference_weight
from generator.compute.resting import resting_energy, resting_equation
from generator.compute.rounding import to_places, whole
from generator.model.grades import Grades
from generator.model.move import Move
from generator.model.stops.day import Sex

_MINUTES_A_DAY = 1440


@dataclass(frozen=True, slots=True)
class TypicalChild:
    """A child of a lesson's grades, of no sex: the mean of a boy and a girl of median weight."""

    age_years: int
    """In the middle of the lesson's grades."""
    weights_kg: tuple[Decimal, Decimal]
    """Median weight of a boy and of a girl, kg."""
    resting: Decimal
    """Mean of the two resting energies, kcal a day."""

    @property
    def equation(self) -> str:
        """Schofield's two rows with their numbers, and their mean."""
        rows = zip((Sex.MALE, Sex.FEMALE), self.weights_kg, strict=True)
        boy, girl = (resting_equation(sex, self.age_years, weight) for sex, weight in rows)
        return f"({boy} + {girl}) ÷ 2"


@dataclass(frozen=True, slots=True)
class MoveMinutes:
    """A gap in minutes of one move, with every number that made it."""

    minutes: Fraction
    """Exact; ``shown`` is what a page says."""
    gap_kcal: Decimal
    """The gap as shown."""
    mety: Decimal
    """Energy cost as a multiple of resting energy, at the child's age."""
    activity: str
    """The activity as its source names it, which may be wider than the move."""
    code: str
    """The row of the source, as printed."""
    child: TypicalChild
    """Whose minutes they are."""

    @property
    def shown(self) -> int:
        """Whole minutes, half goes up: an estimate for a group deserves no decimals. A little is never none."""
        return max(1, whole(self.minutes)) if self.minutes else 0

    @property
    def formula(self) -> str:
        """The computation with its numbers and units: gap ÷ ((METy − 1) × resting energy ÷ 1440)."""
        resting = to_places(Fraction(self.child.resting), 2)
        day = f"{resting} kcal a day ÷ {_MINUTES_A_DAY} minutes a day"
        return f"{self.gap_kcal} kcal ÷ (({self.mety} METy − 1) × {day})"


def typical_child(grades: Grades) -> TypicalChild:
    """The child in the middle of a lesson's grades.

    Pupils of grade g are g + 5 to g + 6 years old (common practice, no source); the middle of
    the span is rounded down to whole years. Grades 3-5 are 8 to 11 years, so 9.

    Sources: weights CDC 2000 growth charts; resting energy Schofield 1985.
    """
    age = (grades.first + grades.last + 11) // 2
    boy, girl = reference_weight(Sex.MALE, age), reference_weight(Sex.FEMALE, age)
    resting = resting_energy(Sex.MALE, age, boy) + resting_energy(Sex.FEMALE, age, girl)
    return TypicalChild(age, (boy, girl), resting / 2)


def move_minutes(move: Move, gap_kcal: Decimal, grades: Grades) -> MoveMinutes | None:
    """Minutes of a move whose energy above rest equals a gap, for a typical child of the grades.

    Nothing where no value for children was published: for the move, or for an age under 6 years.
    An adult's MET has another denominator and is never used for a child.

    Args:
        move: from the library, with or without a row of the Youth Compendium.
        gap_kcal: a gap in energy, not negative.
        grades: whom the lesson is for.

    Raises:
        ValueError: the gap is negative, or the published cost is not above rest.

    Source: Butte and others 2018, Med Sci Sports Exerc 50(2):246-256, METy × Schofield. That net
    of rest is (METy − 1) × resting energy is an inference from it, not a row of the Compendium.
    """
    if gap_kcal < 0:
        raise ValueError(f"a gap is never negative: {gap_kcal}")
    energy, child = move.youth_energy, typical_child(grades)
    if energy is None or child.age_years < 6:
        return None
    mety = energy.mety.at(child.age_years)
    minutes = Fraction(gap_kcal) / net_kcal_a_minute(mety, child.resting)
    return MoveMinutes(minutes, gap_kcal, mety, energy.activity, energy.code, child)


def net_kcal_a_minute(mety: Decimal, resting: Decimal) -> Fraction:
    """Energy above rest in kcal a minute: (METy − 1) × resting energy in kcal a day ÷ 1440.

    Raises:
        ValueError: the cost is not above rest, so no number of minutes would do.
    """
    if mety <= 1:
        raise ValueError(f"{mety} METy is no more than rest")
    return Fraction((mety - 1) * resting) / _MINUTES_A_DAY
