"""Packages: their number, their serving and their figures, and never their brand.

Layout: references.md 11.1 (S), all columns of the release of 30 April 2026.
"""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from generator.model.food_record import FoodRecord, Imported, Label
from generator.problems import LessonError
from generator.read.fooddata.gtin import code, is_number, misread
from generator.read.fooddata.importing import import_foods
from generator.read.fooddata.index import INDEX, called, opened_index, record
from generator.read.fooddata.labels import plain_serving
from tests.read.fooddata.full_layout import FULL, FULL_FOODS
from tests.read.fooddata.official_zip import Table, small_zip


def load(
    root: Path, changed: dict[str, Table | bytes | None] | None = None
) -> tuple[Imported, ...]:
    file = small_zip(root / "full.zip", {**FULL, **(changed or {})})
    return import_foods(root, file, lambda _read, _total: None)


def by_number(root: Path, typed: str) -> list[int]:
    with opened_index(root) as index:
        return [one.fdc for one in called(index, typed)]


def held(root: Path, fdc: int) -> FoodRecord:
    with opened_index(root) as index:
        found = record(index, fdc)
    assert found is not None
    return found


def test_the_full_download_holds_every_kind(tmp_path: Path) -> None:
    kinds = {one.kind: one for one in load(tmp_path)}
    assert {kind: one.foods for kind, one in kinds.items()} == FULL_FOODS
    packages = kinds["branded foods"]
    assert (packages.values, packages.portions) == (7, 2)
    assert (packages.unfit, packages.unsized) == (1, 1)


def test_a_package_is_found_by_what_stands_below_its_barcode(tmp_path: Path) -> None:
    """The newest of two records with one number; zeros in front make no other number."""
    load(tmp_path)
    for typed in ("012345678905", "0012345678905", "12345678905", "0 12345 67890 5"):
        assert by_number(tmp_path, typed) == [402]
    assert by_number(tmp_path, "012345678906") == []


def test_other_foods_are_found_by_their_numbers_too(tmp_path: Path) -> None:
    """Food code of FNDDS, NDB number of Foundation, FDC id."""
    load(tmp_path)
    assert by_number(tmp_path, "41102010") == [301]
    assert by_number(tmp_path, "100266") == [201]
    assert by_number(tmp_path, "0201") == []
    assert by_number(tmp_path, "9999") == []


def test_a_label_gives_its_serving_and_figures_for_a_hundred_grams(tmp_path: Path) -> None:
    load(tmp_path)
    bar = held(tmp_path, 402)
    assert bar.per_100g["energy"] == Decimal("433.0")
    assert bar.per_100g["sodium"] is None
    assert bar.label == Label("2 bars", Decimal(42), "g")
    assert [(one.wording, one.grams) for one in bar.portions] == [("2 bars", Decimal(42))]
    assert bar.category == "Snack bars"
    assert bar.release == "Label data in USDA FoodData Central, branded foods, 2026-04-16"


def test_a_download_of_packages_alone_weighs_no_household_portions(tmp_path: Path) -> None:
    changed: dict[str, Table | bytes | None] = {
        "food.csv": [row for row in FULL["food.csv"] if row[0][0] in "f49"],
        "food_nutrient.csv": [row for row in FULL["food_nutrient.csv"] if row[1][0] in "f4"],
        "food_portion.csv": None,
        "measure_unit.csv": None,
        "foundation_food.csv": None,
        "survey_fndds_food.csv": None,
    }
    assert [(one.kind, one.foods) for one in load(tmp_path, changed)] == [("branded foods", 3)]


@pytest.mark.parametrize(
    ("name", "kind"),
    [
        ("branded_food.csv", "branded foods"),
        ("food_portion.csv", "SR Legacy"),
        ("measure_unit.csv", "FNDDS"),
    ],
)
def test_each_kind_needs_its_files(tmp_path: Path, name: str, kind: str) -> None:
    with pytest.raises(LessonError) as error:
        load(tmp_path, {name: None})
    told = [problem.what for problem in error.value.problems]
    assert f"`{name}` is missing from the zip, and it holds {kind}" in told


def test_what_is_sold_by_millilitres_gets_no_grams(tmp_path: Path) -> None:
    load(tmp_path)
    drink = held(tmp_path, 403)
    assert drink.label == Label("1 serving", Decimal(240), "ml")
    assert drink.portions == ()


def test_no_brand_is_kept(tmp_path: Path) -> None:
    load(tmp_path)
    raw = (tmp_path / INDEX).read_bytes().lower()
    for name in (b"zanzibrand", b"owner of all", b"subname", b"cane syrup"):
        assert name not in raw


def test_a_package_that_cannot_be_measured_is_left_out(tmp_path: Path) -> None:
    load(tmp_path)
    with opened_index(tmp_path) as index:
        assert record(index, 404) is None


def test_figures_of_labels_that_cannot_be_are_left_out_and_the_rest_stays(tmp_path: Path) -> None:
    """Makers send labels in by the million; one slip among them does not make a download broken."""
    rows = [
        *FULL["food_nutrient.csv"],
        ("901", "402", "1093", "-5", *[""] * 9),
        ("902", "403", "1008", "47", *[""] * 9),
    ]
    packages = {one.kind: one for one in load(tmp_path, {"food_nutrient.csv": rows})}
    assert packages["branded foods"].unfit == 3
    assert held(tmp_path, 402).per_100g["energy"] == Decimal("433.0")
    assert held(tmp_path, 403).per_100g["energy"] is None, "two amounts: nobody knows which"


@pytest.mark.parametrize(
    ("household", "said"),
    [
        ("2 cookies", "2 cookies"),
        ("1 Cup (240 mL)", "1 cup"),
        ("2 TBSP", "2 tbsp"),
        ("1/2 cup", "1/2 cup"),
        ("1 1/2 cups dry", "1 1/2 cups"),
        ("about 12 crackers", "12 crackers"),
        ("0.5 SLICES", "0.5 slice"),
        ("3 ZANZIBRAND COOKIES", "3 cookies"),
        ("1 ZANZIBRAND", "1 serving"),
        ("1 ONZ", "1 serving"),
        ("0 cookies", "1 serving"),
        ("cookies", "1 serving"),
        ("", "1 serving"),
    ],
)
def test_a_serving_holds_no_word_that_may_be_a_brand(household: str, said: str) -> None:
    assert plain_serving(household) == said


@pytest.mark.parametrize(
    ("typed", "wrong"),
    [
        ("012345678905", False),
        ("0012345678905", False),
        ("4006381333931", False),
        ("012345678906", True),
        ("012345687905", True),
        ("171168", False),
        ("12 cups", False),
    ],
)
def test_a_number_that_was_misread_does_not_add_up(typed: str, wrong: bool) -> None:
    """GS1 General Specifications, check digit; from memory, with 4006381333931 as a known one."""
    assert misread(typed) == wrong


def test_what_is_a_number() -> None:
    assert code("0012-3456 7890 5") == "12345678905"
    assert not is_number("2 milk")
    assert not is_number("1" * 15)
