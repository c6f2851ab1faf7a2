"""What the library needs of SR Legacy, kept beside the tests, so that they hold its foods anywhere.

`python -m tests.sr_legacy_copy` makes it anew out of the published files, which lie in
`shared/reference-data` beside the checkout of whoever adds a food. Rows and cells are those of the
published files; other foods, and columns that nothing here asks for, are left out.

Source: USDA FoodData Central, SR Legacy, April 2018; a work of the U.S. Government, public domain.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Mapping
from hashlib import sha256
from pathlib import Path

from generator.read.library import read_library

ROOT = Path(__file__).parents[1]
COPY = ROOT / "tests" / "examples" / "sr-legacy"
PUBLISHED = ROOT.parent / "shared" / "reference-data" / "usda_sr_legacy"
"""The official files of SR Legacy, but for food_nutrient.csv; not part of this project."""
SUMS = "SHA256SUMS"
NUTRIENT_OF = {
    "kcal_100g": "1008",
    "fat_g": "1004",
    "satfat_g": "1258",
    "sodium_mg": "1093",
    "sugars_g": "2000",
    "fiber_g": "1079",
    "protein_g": "1003",
    "carb_g": "1005",
    "calcium_mg": "1087",
    "iron_mg": "1089",
    "potassium_mg": "1092",
    "vitamin_c_mg": "1162",
}
"""Columns of values_per_100g.csv and the official nutrient ids of nutrient.csv beside it."""
_PORTION = (
    "id",
    "seq_num",
    "amount",
    "measure_unit_id",
    "portion_description",
    "modifier",
    "gram_weight",
)
TABLES: Mapping[str, tuple[str, ...]] = {
    "food.csv": (
        "fdc_id",
        "data_type",
        "description",
        "food_category_id",
        "publication_date",
    ),
    "food_category.csv": ("id", "code", "description"),
    "food_portion.csv": ("fdc_id", *_PORTION),
    "measure_unit.csv": ("id", "name"),
    "nutrient.csv": ("id", "name", "unit_name", "nutrient_nbr", "rank"),
    "sr_legacy_food.csv": ("fdc_id", "NDB_number"),
    "values_per_100g.csv": ("fdc_id", *NUTRIENT_OF),
}
"""Tables and the columns that are kept of each; of a table with foods, those of the library."""


def copied(folder: Path, wanted: Iterable[int]) -> dict[str, str]:
    """The tables as the copy has them, made of the published ones.

    Args:
        folder: of the published tables.
        wanted: FDC ids of the foods that are kept.
    """
    ids = {str(fdc) for fdc in wanted}
    return {name: _kept(folder / name, columns, ids) for name, columns in TABLES.items()}


def sums(tables: Mapping[str, str]) -> str:
    """A line for each table, as `sha256sum` writes and checks it."""
    lines = (f"{sha256(text.encode()).hexdigest()}  {name}" for name, text in tables.items())
    return "\n".join([*lines, ""])


def _kept(file: Path, columns: tuple[str, ...], ids: set[str]) -> str:
    with file.open(encoding="utf-8", newline="") as source:
        rows = list(csv.DictReader(source))
    if file.name == "nutrient.csv":
        rows = [row for row in rows if row["id"] in NUTRIENT_OF.values()]
    elif "fdc_id" in columns:
        rows = [row for row in rows if row["fdc_id"] in ids]
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\n")
    writer.writerow(columns)
    writer.writerows([row[column] for column in columns] for row in rows)
    return text.getvalue()


def write_copy() -> None:
    """Write the copy for the foods that the library holds now."""
    library = read_library(ROOT)
    tables = copied(PUBLISHED, (food.entry.fdc for food in library.foods.values()))
    for name, text in tables.items():
        (COPY / name).write_text(text, encoding="utf-8", newline="\n")
    (COPY / SUMS).write_text(sums(tables), encoding="utf-8", newline="\n")


if __name__ == "__main__":
    write_copy()
