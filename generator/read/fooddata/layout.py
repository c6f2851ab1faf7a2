"""How a FoodData Central CSV download is laid out, and what of it is kept.

Layouts: the download's own field descriptions, https://fdc.nal.usda.gov/download-datasets.
"""

from __future__ import annotations

from dataclasses import dataclass

from generator.model.food_record import BY_DIFFERENCE, PARTS
from generator.model.measure import Measure, Unit

COLUMNS = {
    "food.csv": ("fdc_id", "data_type", "description", "publication_date"),
    "nutrient.csv": ("id", "name", "unit_name"),
    "food_nutrient.csv": ("fdc_id", "nutrient_id", "amount"),
}
"""The files every layout has, and the columns that are read of each; others are left alone."""

PORTIONS = {
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
"""Files of household portions; missed where the download holds foods without a brand."""

LABELS = {
    "branded_food.csv": (
        "fdc_id",
        "gtin_upc",
        "serving_size",
        "serving_size_unit",
        "household_serving_fulltext",
        "branded_food_category",
    )
}
"""The labels of packages; missed where the download holds branded foods. Who owns the brand and
what it is called stand there too, and are not read."""

CODES = {
    "sr_legacy_food.csv": "NDB_number",
    "foundation_food.csv": "NDB_number",
    "survey_fndds_food.csv": "food_code",
}
"""What foods are called elsewhere, and in which column; not missed."""

CATEGORIES = {
    "food_category.csv": ("id", "description"),
    "wweia_food_category.csv": ("wweia_food_category", "wweia_food_category_description"),
}
"""The shelves: SR Legacy and Foundation carry the first, FNDDS the second. Neither is missed."""
OTHER_SPELLINGS = {"wweia_food_category": "wweia_food_category_code"}
"""How some releases call a column."""

READ = {**COLUMNS, **PORTIONS, **LABELS, **dict.fromkeys(CODES, ()), **CATEGORIES}
"""All files that are looked into."""


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of food record."""

    data_type: str
    """How ``food.csv`` calls it."""
    title: str
    """How a reader knows it."""
    branded: bool = False
    """Whether its foods are packages and their figures those of labels, as makers send them in."""


KINDS = {
    kind.data_type: kind
    for kind in (
        Kind("sr_legacy_food", "SR Legacy"),
        Kind("foundation_food", "Foundation"),
        Kind("survey_fndds_food", "FNDDS"),
        Kind("branded_food", "branded foods", branded=True),
    )
}
"""In the order they are shown when a food is searched. Other kinds in ``food.csv`` are samples
behind these foods."""

NUTRIENTS: dict[str, tuple[int, ...]] = {
    **{measure.value: measure.entry.nutrients for measure in Measure},
    **PARTS,
}
"""Nutrient ids of each figure, the preferred one first.
Energy in kJ is nutrient 1062 and is never among them."""

FIGURE_OF = {nutrient: figure for figure, ids in NUTRIENTS.items() for nutrient in ids}
"""Figure of each nutrient id."""

BELOW_ZERO = frozenset(nutrient for figure in BY_DIFFERENCE for nutrient in NUTRIENTS[figure])
"""Nutrients whose amount may be negative."""

UNITS = {measure.value: measure.unit for measure in Measure} | dict.fromkeys(PARTS, Unit.GRAM)
"""Units of ``nutrient.csv``, in small letters."""

NO_UNIT = "9999"
"""The measure unit called ``undetermined``: amount and words alone make the portion."""

SERVING_UNITS = {"g": "g", "grm": "g", "gram": "g", "ml": "ml", "mlt": "ml"}
"""Units of a label's serving, in small letters; with any other its figures are for nobody knows what."""

KEPT = f"{NUTRIENTS}"
"""What an index holds of a download, to tell an index that knows less."""
