"""The published records of the foods of the library, from the copy beside the tests."""

from __future__ import annotations

import csv

from tests.sr_legacy_copy import COPY


def rows(name: str) -> list[dict[str, str]]:
    """The rows of one table, of the foods of the library alone.

    Source: USDA FoodData Central, SR Legacy, April 2018; public domain.
    """
    with (COPY / name).open(encoding="utf-8", newline="") as text:
        return list(csv.DictReader(text))


COLUMNS = {
    "energy": "kcal_100g",
    "protein": "protein_g",
    "fat": "fat_g",
    "carbohydrate": "carb_g",
    "sugars": "sugars_g",
    "fiber": "fiber_g",
    "saturated_fat": "satfat_g",
    "sodium": "sodium_mg",
    "calcium": "calcium_mg",
    "iron": "iron_mg",
    "potassium": "potassium_mg",
    "vitamin_c": "vitamin_c_mg",
}
"""Columns of the reference data by what an entry of a food calls them."""
