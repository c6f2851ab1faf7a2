"""A record of FoodData Central, as an official download gives it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from generator.model.measure import Measure

PARTS = {"fat": (1004,), "carbohydrate": (1005,)}
"""What is kept beside the measures, in grams, for the plausibility of energy: nutrient ids of
FoodData Central, the preferred one first."""

BY_DIFFERENCE = frozenset({"carbohydrate"})
"""What is not measured but left over when the rest of 100 g was: small figures below zero are real."""

FIGURES = (
    Measure.ENERGY.value,
    Measure.PROTEIN.value,
    *PARTS,
    *(one.value for one in Measure if one not in {Measure.ENERGY, Measure.PROTEIN}),
)
"""What is kept of a record, in the order of ``site_data/foods.yaml``."""


LABEL_DATA = "Label data"
"""How the release of a record begins whose figures are those of a package's label."""


@dataclass(frozen=True, slots=True)
class RecordPortion:
    """A household portion in the record's own wording."""

    wording: str
    """Amount and unit, such as ``0.5 cup, chopped``."""
    grams: Decimal
    """Weight of the whole stated amount, in grams."""


@dataclass(frozen=True, slots=True)
class Label:
    """The serving on the label of a package."""

    wording: str
    """Amount and household unit, such as ``2 cookies``; ``1 serving`` where the label has no plain unit."""
    size: Decimal
    """How much that is, in ``unit``."""
    unit: Literal["g", "ml"]
    """What the label's figures are for a hundred of, too. What a millilitre weighs is not known."""


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
    """What 100 g hold, by the names of ``FIGURES``; nothing where the record has no value. What
    100 ml hold where ``label`` is in millilitres."""
    portions: tuple[RecordPortion, ...]
    """In the record's order; none where nothing says what a portion weighs."""
    nutrients: Mapping[str, int] = field(default_factory=dict)
    """Nutrient id each figure was taken from."""
    code: str = ""
    """Its number elsewhere: GTIN without zeros in front, food code of FNDDS, NDB number."""
    label: Label | None = None
    """What the label of a package says of its serving; nothing for a food without a brand."""


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
    """How many amounts of nutrients."""
    portions: int
    """How many household portions."""
    weightless: int
    """Portions left out because their amount or weight is 0."""
    unmeasured: int
    """Portions left out because they say ``Quantity not specified``."""
    unfit: int = 0
    """Figures of labels left out because they are none, or two of one nutrient."""
    unsized: int = 0
    """Packages left out whose serving is given neither in grams nor in millilitres."""
