"""Downloads of every layout into the index, and every way a download can be wrong.

Layouts as in the field descriptions of https://fdc.nal.usda.gov/download-datasets (from memory),
but for SR Legacy, which is checked against its own files in test_sr_legacy.py.
"""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

from generator.model.food_record import FoodRecord, Imported
from generator.read.fooddata.importing import import_foods
from generator.read.fooddata.index import opened_index, record, titles
from tests.read.fooddata.official_zip import (
    FOOD,
    FOOD_NUTRIENT,
    FOOD_PORTION,
    MEASURE_UNIT,
    Table,
    small_zip,
)

PORTION_HEAD = FOOD_PORTION[0]
FOUNDATION: dict[str, Table | bytes | None] = {
    "food.csv": (
        FOOD[0],
        ("201", "foundation_food", "Beans, black, dry", "16", "2022-04-28"),
        ("202", "foundation_food", "Beans, navy, dry", "16", "2023-10-26"),
        ("901", "sub_sample_food", "Beans, sample", "16", "2022-04-28"),
        ("902", "market_acquisition", "Beans, bought", "16", "2022-04-28"),
    ),
    "food_nutrient.csv": (
        ("id", "fdc_id", "nutrient_id", "amount", "data_points", "derivation_id", "min", "max"),
        ("1", "201", "1008", "341", "", "", "", ""),
        ("2", "201", "2047", "340", "", "", "", ""),
        ("3", "201", "2048", "339", "", "", "", ""),
        ("4", "202", "1062", "1400", "", "", "", ""),
        ("5", "202", "2047", "332", "", "", "", ""),
        ("6", "202", "1063", "2.5", "", "", "", ""),
        ("8", "201", "2033", "21.1", "", "", "", ""),
        ("9", "202", "2033", "18.4", "", "", "", ""),
        ("10", "202", "1079", "15.3", "", "", "", ""),
        ("11", "202", "1087", "147", "", "", "", ""),
        ("7", "901", "1008", "-1", "", "", "", ""),
    ),
    "food_portion.csv": (
        PORTION_HEAD,
        ("1", "201", "1", "1.0", "1000", "", "dry", "194.0"),
        ("2", "902", "1", "1.0", "1000", "", "", "10"),
    ),
}
SURVEY: dict[str, Table | bytes | None] = {
    "food.csv": (
        FOOD[0],
        ("301", "survey_fndds_food", "Black beans, NFS", "2802", "2022-10-28"),
    ),
    "food_nutrient.csv": (
        ("id", "fdc_id", "nutrient_id", "amount"),
        ("1", "301", "208", "151"),
        ("2", "301", "269", "0.5"),
        ("3", "301", "1093", "230"),
    ),
    "food_portion.csv": (
        PORTION_HEAD,
        ("1", "301", "1", "", "9999", "1 cup", "10205", "180"),
        ("2", "301", "2", "", "9999", "Quantity not specified", "90000", "90"),
        ("3", "301", "3", "", "9999", "Guideline amount per rice", "62101", "45"),
    ),
    "food_category.csv": None,
    "wweia_food_category.csv": (
        ("wweia_food_category", "wweia_food_category_description"),
        ("2802", "Beans, peas, legumes"),
    ),
}


def load(
    root: Path, changed: dict[str, Table | bytes | None] | None = None
) -> tuple[Imported, ...]:
    file = small_zip(root / "download.zip", changed)
    return import_foods(root, file, lambda _read, _total: None)


def held(root: Path, fdc: int) -> FoodRecord:
    with opened_index(root) as index:
        found = record(index, fdc)
    assert found is not None
    return found


def test_sr_legacy_keeps_values_exact_and_blank_is_no_value(tmp_path: Path) -> None:
    (imported,) = load(tmp_path)
    assert imported == Imported("SR Legacy", "2019-04-01", 2, 5, 2, 1, 0)
    beans = held(tmp_path, 101)
    assert beans.per_100g["energy"] == Decimal(132)
    assert str(beans.per_100g["protein"]) == "8.86"
    assert beans.per_100g["sugars"] is None
    assert beans.category == "Legumes and Legume Products"
    assert beans.release == "USDA FoodData Central, SR Legacy, 2019-04-01"
    assert held(tmp_path, 102).per_100g["sodium"] == 100


def test_the_weight_belongs_to_the_stated_amount(tmp_path: Path) -> None:
    """references.md 11 b: half a cup is written as an amount of 0.5 with its own weight."""
    load(tmp_path)
    portions = [(one.wording, one.grams) for one in held(tmp_path, 101).portions]
    assert portions == [("1 cup", Decimal(172)), ("0.5 cup, mashed", Decimal("90.5"))]


def test_foundation_prefers_plain_then_general_factors_and_leaves_samples(
    tmp_path: Path,
) -> None:
    (imported,) = load(tmp_path, FOUNDATION)
    assert (imported.kind, imported.published, imported.foods) == ("Foundation", "2023-10-26", 2)
    assert held(tmp_path, 201).per_100g["energy"] == 341
    assert held(tmp_path, 201).nutrients["energy"] == 1008
    assert held(tmp_path, 202).per_100g["energy"] == 332
    assert held(tmp_path, 202).nutrients["energy"] == 2047
    assert held(tmp_path, 202).per_100g["sugars"] == Decimal("2.5")
    assert held(tmp_path, 202).per_100g["calcium"] == 147
    assert held(tmp_path, 201).per_100g["calcium"] is None
    assert [one.wording for one in held(tmp_path, 201).portions] == ["1 cup dry"]


def test_fiber_by_the_newer_method_serves_where_there_is_no_other(tmp_path: Path) -> None:
    """references.md 11.1 (S): Foundation foods have fiber as 2033 more often than as 1079."""
    load(tmp_path, FOUNDATION)
    assert held(tmp_path, 201).per_100g["fiber"] == Decimal("21.1")
    assert held(tmp_path, 202).per_100g["fiber"] == Decimal("15.3")


def test_kilojoules_are_never_taken_for_kilocalories(tmp_path: Path) -> None:
    rows = (FOOD_NUTRIENT[0], ("1", "101", "1062", "552", "1"), ("2", "102", "1008", "56", "1"))
    load(tmp_path, {"food_nutrient.csv": rows})
    assert held(tmp_path, 101).per_100g["energy"] is None


def test_survey_foods_by_nutrient_number_and_with_portions_in_words(tmp_path: Path) -> None:
    (imported,) = load(tmp_path, SURVEY)
    assert (imported.kind, imported.unmeasured) == ("FNDDS", 1)
    beans = held(tmp_path, 301)
    assert beans.per_100g["energy"] == 151
    assert beans.per_100g["sugars"] == Decimal("0.5")
    assert beans.category == "Beans, peas, legumes"
    assert [one.wording for one in beans.portions] == ["1 cup", "Guideline amount per rice"]


def test_a_shelf_of_the_survey_by_either_heading(tmp_path: Path) -> None:
    """The category comes with the food, or with its code in a file of its own (11.1, S)."""
    other = {
        **SURVEY,
        "wweia_food_category.csv": (
            ("wweia_food_category_code", "wweia_food_category_description"),
            ("2802", "Beans, peas, legumes"),
        ),
        "food.csv": (FOOD[0], ("301", "survey_fndds_food", "Black beans, NFS", "", "2022-10-28")),
        "survey_fndds_food.csv": (
            ("fdc_id", "food_code", "wweia_category_number", "start_date", "end_date"),
            ("301", "41102010", "2802", "", ""),
        ),
    }
    load(tmp_path, other)
    beans = held(tmp_path, 301)
    assert (beans.category, beans.code) == ("Beans, peas, legumes", "41102010")


def test_carbohydrate_by_difference_may_be_a_little_below_zero(tmp_path: Path) -> None:
    """references.md 11.1 (S); a zero with a sign is a zero, and no other figure may be negative."""
    rows = (
        FOOD_NUTRIENT[0],
        ("1", "101", "1005", "-0.150", "1"),
        ("2", "102", "1005", "-0.0", "1"),
    )
    load(tmp_path, {"food_nutrient.csv": rows})
    assert held(tmp_path, 101).per_100g["carbohydrate"] == Decimal("-0.15")
    assert str(held(tmp_path, 102).per_100g["carbohydrate"]) == "0"


def test_amounts_that_stand_apart_in_the_file_come_together(tmp_path: Path) -> None:
    rows = (
        FOOD_NUTRIENT[0],
        ("1", "101", "1008", "132", "1"),
        ("2", "102", "1008", "56", "1"),
        ("3", "101", "1003", "8.86", "1"),
        ("4", "101", "1008", "132.0", "1"),
    )
    load(tmp_path, {"food_nutrient.csv": rows})
    beans = held(tmp_path, 101)
    assert (beans.per_100g["energy"], beans.per_100g["protein"]) == (132, Decimal("8.86"))


def test_kinds_live_side_by_side_and_one_is_replaced_alone(tmp_path: Path) -> None:
    load(tmp_path)
    load(tmp_path, FOUNDATION)
    fewer = {
        "food.csv": FOOD[:2],
        "food_nutrient.csv": FOOD_NUTRIENT[:2],
        "food_portion.csv": FOOD_PORTION[:2],
    }
    load(tmp_path, fewer)
    with opened_index(tmp_path) as index:
        assert titles(index) == ("Foundation", "SR Legacy")
        assert record(index, 102) is None
        assert record(index, 201) is not None


def test_the_files_may_lie_in_one_folder(tmp_path: Path) -> None:
    file = small_zip(tmp_path / "a.zip", folder="FoodData_Central_csv/")
    assert import_foods(tmp_path, file, lambda _read, _total: None)[0].foods == 2


def test_progress_adds_up_to_all_bytes(tmp_path: Path) -> None:
    told: list[tuple[int, int]] = []
    file = small_zip(tmp_path / "a.zip")
    import_foods(tmp_path, file, lambda read, total: told.append((read, total)))
    assert sum(read for read, _ in told) == told[0][1]


def test_measure_units_that_are_not_named_are_no_part_of_a_wording(tmp_path: Path) -> None:
    assert MEASURE_UNIT[-1] == ("9999", "undetermined")
    load(tmp_path)
    assert all("undetermined" not in one.wording for one in held(tmp_path, 101).portions)
