"""How a FoodData Central CSV download is laid out, and what of it is kept.

Layouts: the download's own field descriptions, https://fdc.nal.usda.gov/download-datasets.
"""

from __future__ import annotations

from dataclasses import dataclass

from generator.model.food_record import PARTS
from generator.model.measure import Measure, Unit

COLUMNS = {
    "food.csv": ("fdc_id", "data_type", "description", "publication_date"),
    "nutrient.csv": ("id", "name", "unit_name"),
    "food_nutrient.csv": ("fdc_id", "nutrient_id", "amount"),
    "measure_unit.csv": ("id", "name"),
    "food_portion.csv": (
        "fdc_id",
        "amount",
        "measure_unit_id",
        "portion_description",
        "modifier",
        "gram_weight",
    ),
}
"""The files every layout has, and the columns that are read of each; others are left alone."""

CATEGORIES = {
    "food_category.csv": ("id", "description"),
    "wweia_food_category.csv": ("wweia_food_category", "wweia_food_category_description"),
}
"""The shelves: SR Legacy and Foundation carry the first, FNDDS the second. Neither is missed."""


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of food record."""

    data_type: str
    """How ``food.csv`` calls it."""
    title: str
    """How a reader knows it."""


KINDS = {
    kind.data_type: kind
    for kind in (
        Kind("sr_legacy_food", "SR Legacy"),
        Kind("foundation_food", "Foundation"),
        Kind("survey_fndds_food", "FNDDS"),
    )
}
"""Other kinds in ``food.csv`` are samples behind these foods, or branded packages."""

NUTRIENTS: dict[str, tuple[int, ...]] = {
    **{measure.value: measure.entry.nutrients for measure in Measure},
    **PARTS,
}
"""Nutrient ids of each figure, the preferred one first.
Energy in kJ is nutrient 1062 and is never among them."""

UNITS = {measure.value: measure.unit for measure in Measure} | dict.fromkeys(PARTS, Unit.GRAM)
"""Units of ``nutrient.csv``, in small letters."""

_FOUNDATION = {
    measure.value: ids for measure in Measure if (ids := measure.entry.foundation_nutrients)
}

NO_UNIT = "9999"
"""The measure unit called ``undetermined``: amount and words alone make the portion."""


KEPT = f"{NUTRIENTS}{_FOUNDATION}"
"""What an index holds of a download, to tell an index that knows less."""


def preferences(kind: Kind) -> dict[int, tuple[str, int]]:
    """Figure and rank of each nutrient id; of two with the same figure, the lower rank is kept."""
    figures = NUTRIENTS | (_FOUNDATION if kind.data_type == "foundation_food" else {})
    return {
        nutrient: (figure, rank)
        for figure, nutrients in figures.items()
        for rank, nutrient in enumerate(nutrients)
    }
