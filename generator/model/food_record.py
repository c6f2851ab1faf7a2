"""A record of FoodData Central, as an official download gives it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

from generator.model.measure import Measure

PARTS = {"fat": (1004,), "carbohydrate": (1005,)}
"""What is kept beside the measures, in grams, for the plausibility of energy: nutrient ids of
FoodData Central, the preferred one first."""

FIGURES = (
    Measure.ENERGY.value,
    Measure.PROTEIN.value,
    *PARTS,
    *(one.value for one in Measure if one not in {Measure.ENERGY, Measure.PROTEIN}),
)
"""What is kept of a record, in the order of ``site_data/foods.yaml``."""


@dataclass(frozen=True, slots=True)
class RecordPortion:
    """A household portion in the record's own wording."""

    wording: str
    """Amount and unit, such as ``0.5 cup, chopped``."""
    grams: Decimal
    """Weight of the whole stated amount, in grams."""


@dataclass(frozen=True, slots=True)
class FoodRecord:
    """One food of a release."""

    fdc: int
    """FoodData Central id."""
    description: str
    """The record's own title."""
    category: str
    """The record's own shelf, or nothing where the download names none."""
    release: str
    """Such as ``USDA FoodData Central, SR Legacy, 2019-04-01``: kind and newest publication date."""
    per_100g: Mapping[str, Decimal | None]
    """What 100 g hold, by the names of ``FIGURES``; nothing where the record has no value."""
    portions: tuple[RecordPortion, ...]
    """In the record's order."""


@dataclass(frozen=True, slots=True)
class FoundRecord:
    """A record that fits what was searched for."""

    fdc: int
    """FoodData Central id."""
    description: str
    """The record's own title."""
    energy: str
    """kcal in 100 g, or nothing where the record has no value."""
    portions: int
    """How many household portions it weighs."""
    release: str
    """As in ``FoodRecord``."""


@dataclass(frozen=True, slots=True)
class Imported:
    """What came of one import, for one kind of food."""

    kind: str
    """Such as ``SR Legacy``."""
    published: str
    """Newest publication date of its foods, year-month-day."""
    foods: int
    """How many foods the index holds of this kind now."""
    values: int
    """How many figures."""
    portions: int
    """How many household portions."""
    weightless: int
    """Portions left out because their amount or weight is 0."""
    unmeasured: int
    """Portions left out because they say ``Quantity not specified``."""
