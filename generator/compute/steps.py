"""The steps from a record to a shown number, as data: whoever tells them puts them into words.

``author/step_words.py`` does.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.count import Count
from generator.compute.day import DayBalance
from generator.compute.energy_needs import EnergyNeed
from generator.compute.estimate import Rounded
from generator.compute.gap import Gap
from generator.compute.label import Rounding
from generator.compute.move_minutes import MoveMinutes
from generator.compute.reference_bodies import Body
from generator.model.food import Food, Serving
from generator.model.measure import Unit
from generator.model.move_energy import YouthEnergy
from generator.model.stops.compare import Item
from generator.model.stops.day import Person


@dataclass(frozen=True, slots=True)
class FromRecord:
    """What 100 g of a food hold, by its record."""

    food: Food
    """Whose record it is."""
    per_100g: Fraction
    """In ``unit``."""
    unit: Unit
    """Of the measure."""


@dataclass(frozen=True, slots=True)
class Weighed:
    """What an amount weighs."""

    serving: Serving
    """The portion, how often, and its grams."""


@dataclass(frozen=True, slots=True)
class OfAmount:
    """What the amount holds: per 100 g × grams ÷ 100."""

    per_100g: Fraction
    """In ``unit``."""
    grams: Fraction
    """What the amount weighs."""
    exact: Fraction
    """In ``unit``."""
    unit: Unit
    """Of the measure."""


@dataclass(frozen=True, slots=True)
class LabelRounding:
    """The amount's value rounded as a label shows it."""

    exact: Fraction
    """Before, in ``unit``."""
    value: Decimal
    """As shown."""
    rounding: Rounding
    """The rule that served, and which of its steps."""
    unit: Unit
    """Of the measure."""


@dataclass(frozen=True, slots=True)
class OwnValue:
    """A value the lesson gives itself; nothing is rounded."""

    item: Item
    """As the lesson has it, with its source."""


@dataclass(frozen=True, slots=True)
class Subtraction:
    """The smaller of two shown values from the larger."""

    gap: Gap
    """Both values and what lies between them."""
    unit: Unit
    """Of all of them."""


@dataclass(frozen=True, slots=True)
class Estimation:
    """A subtraction of rounded numbers."""

    rounded: Rounded
    """Both numbers, and what they are rounded to."""
    gap: Gap
    """Whose numbers they are."""


@dataclass(frozen=True, slots=True)
class Addition:
    """Shown values added up."""

    parts: tuple[Decimal, ...]
    """In the measure's unit."""
    total: Decimal
    """In the unit of its figure."""


@dataclass(frozen=True, slots=True)
class Division:
    """A gap in counts."""

    gap: Decimal
    """In ``unit``."""
    count: Count
    """How often, and what is left over."""
    unit: Unit
    """Of the gap."""


@dataclass(frozen=True, slots=True)
class AsWritten:
    """A number the educator chose."""

    key: str
    """The key it is written under."""


@dataclass(frozen=True, slots=True)
class ReferenceBody:
    """Whose height and weight an equation takes."""

    person: Person
    """As the lesson has them."""
    body: Body
    """Height and weight of a reference adult."""


@dataclass(frozen=True, slots=True)
class NeedEquation:
    """What a day took, by a published equation."""

    person: Person
    """As the lesson has them."""
    need: EnergyNeed
    """The equation with its result in kcal."""


@dataclass(frozen=True, slots=True)
class NeedRounding:
    """What a day took, as it is shown."""

    need: EnergyNeed
    """In kcal, before rounding."""
    balance: DayBalance
    """With the need as shown."""


@dataclass(frozen=True, slots=True)
class Balance:
    """What a day took from what it gave, or the other way round."""

    balance: DayBalance
    """Both sums in kcal, as shown."""
    exact: Fraction
    """What lies between the two before any rounding, kcal; never negative."""


@dataclass(frozen=True, slots=True)
class Leaning:
    """What a day gave as a share of what it took, and which way that leans."""

    balance: DayBalance
    """With the share and what still counts as even."""


@dataclass(frozen=True, slots=True)
class EnergyCost:
    """What a move costs a child, as a multiple of rest."""

    minutes: MoveMinutes
    """With the cost that was taken."""
    energy: YouthEnergy
    """Its source and status."""


@dataclass(frozen=True, slots=True)
class RestingEnergy:
    """What a typical child's rest costs."""

    minutes: MoveMinutes
    """With the child it is of."""


@dataclass(frozen=True, slots=True)
class MinutesOfGap:
    """A gap in minutes of a move."""

    minutes: MoveMinutes
    """With the formula and its result."""


@dataclass(frozen=True, slots=True)
class Reckoning:
    """The answer to a question, from numbers of the lesson."""

    parts: tuple[Fraction | str, ...]
    """The sum with its numbers and signs; without a sign, all that was chosen among."""
    names: tuple[str, ...]
    """Of the numbers of the lesson in it, in their order; none where a choice was made."""
    value: Decimal
    """What it comes to."""


Step = (
    FromRecord
    | Weighed
    | OfAmount
    | LabelRounding
    | OwnValue
    | Subtraction
    | Addition
    | Division
    | AsWritten
    | ReferenceBody
    | NeedEquation
    | NeedRounding
    | Balance
    | Leaning
    | EnergyCost
    | RestingEnergy
    | MinutesOfGap
    | Estimation
    | Reckoning
)
"""One step on the way to a number."""
