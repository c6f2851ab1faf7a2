"""A full download in little, with every column of references.md 11.1 (release of 30 April 2026)."""

from __future__ import annotations

from tests.read.fooddata.official_zip import FOOD, NUTRIENT, Table

_BLANK = ("",) * 9
_LABEL_TAIL = ("LI", "", "2026-01-01", "2026-01-01", "United States", "", "", "", "", "")


def _label(
    fdc: str, gtin: str, size: str, unit: str, household: str, shelf: str
) -> tuple[str, ...]:
    brand = ("Owner of all", "Zanzibrand", "Subname")
    return (fdc, *brand, gtin, "OATS, CANE SYRUP", "", size, unit, household, shelf, *_LABEL_TAIL)


FULL_FOODS = {"Foundation": 1, "FNDDS": 1, "SR Legacy": 2, "branded foods": 3}
"""How many foods of each kind it holds."""

FULL: dict[str, Table] = {
    "food.csv": (
        *FOOD,
        ("401", "branded_food", "OAT BAR", "", "2025-10-30"),
        ("402", "branded_food", "OAT BAR", "", "2026-04-16"),
        ("403", "branded_food", "PEAR DRINK", "", "2026-04-16"),
        ("404", "branded_food", "DROPS", "", "2026-04-16"),
        ("201", "foundation_food", "Chicken, thigh, with skin", "5", "2026-04-30"),
        ("301", "survey_fndds_food", "Black beans, NFS", "", "2024-10-31"),
        ("901", "sub_sample_food", "Chicken, sample", "5", "2026-04-30"),
    ),
    "nutrient.csv": NUTRIENT,
    "food_nutrient.csv": (
        (
            "id",
            "fdc_id",
            "nutrient_id",
            "amount",
            "data_points",
            "derivation_id",
            "min",
            "max",
            "median",
            "loq",
            "footnote",
            "min_year_acquired",
            "percent_daily_value",
        ),
        ("1", "401", "1008", "430", *_BLANK),
        ("2", "402", "1008", "433.0", *_BLANK),
        ("3", "402", "1079", "9.52", *_BLANK),
        ("4", "402", "2000", "1e9", *_BLANK),
        ("5", "403", "1008", "46", *_BLANK),
        ("6", "403", "2000", "11.2", *_BLANK),
        ("7", "403", "1003", "0", *_BLANK),
        ("8", "404", "1008", "0", *_BLANK),
        ("9", "201", "1005", "-0.15", *_BLANK),
        ("10", "201", "2047", "221", *_BLANK),
        ("11", "201", "2033", "0.3", *_BLANK),
        ("12", "301", "1008", "151", *_BLANK),
        ("13", "402", "1004", "15", *_BLANK),
    ),
    "measure_unit.csv": (("id", "name"), ("1000", "cup"), ("9999", "undetermined")),
    "food_portion.csv": (
        (
            "id",
            "fdc_id",
            "seq_num",
            "amount",
            "measure_unit_id",
            "portion_description",
            "modifier",
            "gram_weight",
            "data_points",
            "footnote",
            "min_year_acquired",
        ),
        ("1", "201", "1", "1", "1000", "", "", "140", "", "", ""),
        ("2", "301", "1", "", "9999", "1 cup", "10205", "180", "", "", ""),
    ),
    "food_category.csv": (("id", "code", "description"), ("5", "0500", "Poultry Products")),
    "foundation_food.csv": (("fdc_id", "NDB_number", "footnote"), ("201", "100266", "")),
    "survey_fndds_food.csv": (
        ("fdc_id", "food_code", "wweia_category_code", "start_date", "end_date"),
        ("301", "41102010", "2802", "2021-01-01", "2023-12-31"),
    ),
    "wweia_food_category.csv": (
        ("wweia_food_category", "wweia_food_category_description"),
        ("2802", "Beans, peas, legumes"),
    ),
    "branded_food.csv": (
        (
            "fdc_id",
            "brand_owner",
            "brand_name",
            "subbrand_name",
            "gtin_upc",
            "ingredients",
            "not_a_significant_source_of",
            "serving_size",
            "serving_size_unit",
            "household_serving_fulltext",
            "branded_food_category",
            "data_source",
            "package_weight",
            "modified_date",
            "available_date",
            "market_country",
            "discontinued_date",
            "preparation_state_code",
            "trade_channel",
            "short_description",
            "material_code",
        ),
        _label("401", "00012345678905", "40.0", "g", "2 BARS", "Snack bars"),
        _label("402", "012345678905", "42.0", "GRM", "2 Zanzibrand bars", "Snack bars"),
        _label("403", "4006381333931", "240", "MLT", "1 Zanzibrand", "Fruit drinks"),
        _label("404", "40063813", "5", "IU", "5 DROPS", "Other"),
    ),
}
"""Files that take the place of those of ``small_zip``."""
