"""Zips laid out as FoodData Central publishes them: small ones by hand, SR Legacy from its files."""

from __future__ import annotations

import csv
import io
import zipfile
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path

from tests.sr_legacy_copy import NUTRIENT_OF, PUBLISHED

Table = Sequence[Sequence[str]]

FOOD: Table = (
    ("fdc_id", "data_type", "description", "food_category_id", "publication_date"),
    ("101", "sr_legacy_food", "Beans, black, cooked", "16", "2019-04-01"),
    ("102", "sr_legacy_food", "Soup, lentil, “home” style", "6", "2018-04-01"),
)
NUTRIENT: Table = (
    ("id", "name", "unit_name", "nutrient_nbr", "rank"),
    ("1003", "Protein", "G", "203", "600.0"),
    ("1004", "Total lipid (fat)", "G", "204", "800.0"),
    ("1005", "Carbohydrate, by difference", "G", "205", "1110.0"),
    ("1008", "Energy", "KCAL", "208", "300.0"),
    ("1062", "Energy", "kJ", "268", "400.0"),
    ("1063", "Sugars, Total NLEA", "G", "269.3", "1500.0"),
    ("1079", "Fiber, total dietary", "G", "291", "1200.0"),
    ("1087", "Calcium, Ca", "MG", "301", "5300.0"),
    ("1089", "Iron, Fe", "MG", "303", "5400.0"),
    ("1092", "Potassium, K", "MG", "306", "5700.0"),
    ("1093", "Sodium, Na", "MG", "307", "5800.0"),
    ("1162", "Vitamin C, total ascorbic acid", "MG", "401", "6300.0"),
    ("1258", "Fatty acids, total saturated", "G", "606", "9700.0"),
    ("2000", "Sugars, Total", "G", "269", "1510.0"),
    ("2033", "Total dietary fiber (AOAC 2011.25)", "G", "293", "1300.0"),
    ("2047", "Energy (Atwater General Factors)", "KCAL", "957", "280.0"),
    ("2048", "Energy (Atwater Specific Factors)", "KCAL", "958", "290.0"),
)
FOOD_NUTRIENT: Table = (
    ("id", "fdc_id", "nutrient_id", "amount", "data_points"),
    ("1", "101", "1008", "132.0", "1"),
    ("2", "101", "1062", "552", "1"),
    ("3", "101", "1003", "8.860", "1"),
    ("4", "101", "1079", "8.7", "1"),
    ("5", "101", "2000", "", "1"),
    ("6", "102", "1008", "56", "1"),
    ("7", "102", "1093", "1.0E+2", "1"),
)
FOOD_PORTION: Table = (
    (
        "id",
        "fdc_id",
        "seq_num",
        "amount",
        "measure_unit_id",
        "portion_description",
        "modifier",
        "gram_weight",
    ),
    ("1", "101", "1", "1", "9999", "", "cup", "172"),
    ("2", "101", "2", "0.5", "9999", "", "cup,  mashed", "90.50"),
    ("3", "102", "1", "0", "9999", "", "cup", "240"),
)
MEASURE_UNIT: Table = (("id", "name"), ("1000", "cup"), ("9999", "undetermined"))
FOOD_CATEGORY: Table = (
    ("id", "code", "description"),
    ("6", "0600", "Soups, Sauces, and Gravies"),
    ("16", "1600", "Legumes and Legume Products"),
)
TABLES: Mapping[str, Table] = {
    "food.csv": FOOD,
    "nutrient.csv": NUTRIENT,
    "food_nutrient.csv": FOOD_NUTRIENT,
    "food_portion.csv": FOOD_PORTION,
    "measure_unit.csv": MEASURE_UNIT,
    "food_category.csv": FOOD_CATEGORY,
}


def csv_text(rows: Iterable[Sequence[str]]) -> str:
    """Rows as the official files write them: every cell in quotes."""
    text = io.StringIO()
    csv.writer(text, quoting=csv.QUOTE_ALL, lineterminator="\n").writerows(rows)
    return text.getvalue()


def small_zip(
    file: Path, changed: Mapping[str, Table | bytes | None] | None = None, folder: str = ""
) -> Path:
    """A whole little download, with some of its files changed, or left out where None is given."""
    files: dict[str, Table | bytes | None] = {**TABLES, **(changed or {})}
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in files.items():
            if content is not None:
                raw = content if isinstance(content, bytes) else csv_text(content).encode()
                archive.writestr(folder + name, raw)
    return file


def sr_legacy_zip(
    file: Path,
    changed: Mapping[tuple[str, str], str] | None = None,
    tables: Path = PUBLISHED,
) -> Path:
    """SR Legacy as published: its files, and food_nutrient.csv made of values_per_100g.csv.

    `changed` gives other amounts by FDC id and nutrient id; `tables` may be the copy of some foods.
    """
    names = (
        "food.csv",
        "food_category.csv",
        "food_portion.csv",
        "measure_unit.csv",
        "nutrient.csv",
        "sr_legacy_food.csv",
    )
    folder = "FoodData_Central_sr_legacy_food_csv_2018-04/"
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        for name in names:
            archive.write(tables / name, folder + name)
        text = csv_text(_food_nutrient(changed or {}, tables))
        archive.writestr(f"{folder}food_nutrient.csv", text)
    return file


def reference_values(tables: Path = PUBLISHED) -> list[dict[str, str]]:
    """The rows of values_per_100g.csv."""
    with (tables / "values_per_100g.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def _food_nutrient(changed: Mapping[tuple[str, str], str], tables: Path) -> Iterable[Sequence[str]]:
    tail = ("data_points", "derivation_id", "min", "max", "median", "footnote", "min_year_acquired")
    yield ("id", "fdc_id", "nutrient_id", "amount", *tail)
    number = 0
    for row in reference_values(tables):
        for column, nutrient in NUTRIENT_OF.items():
            amount = changed.get((row["fdc_id"], nutrient), row[column])
            if amount:  # the official file has no row where a record has no value
                number += 1
                yield (str(number), row["fdc_id"], nutrient, amount, "", "4", "", "", "", "", "")
