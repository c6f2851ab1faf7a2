"""The whole of SR Legacy through the import, against the official files themselves.

Source: USDA FoodData Central, SR Legacy, April 2018; references.md 3.4 and 11 b (status C).
"""

from __future__ import annotations

import csv
import re
import shutil
from collections import Counter
from decimal import Decimal
from pathlib import Path

import pytest

from generator.author.foods import refresh_foods
from generator.model.food_record import Imported
from generator.read.fooddata.importing import import_foods
from generator.read.fooddata.index import INDEX, opened_index, record
from tests.read.fooddata.official_zip import reference_values, sr_legacy_zip
from tests.sr_legacy_copy import COPY, NUTRIENT_OF, PUBLISHED

whole_release = pytest.mark.skipif(
    not PUBLISHED.is_dir(), reason="the official SR Legacy files are not beside this project"
)
SITE = Path(__file__).parents[3]
FIGURE_OF = {
    "kcal_100g": "energy",
    "fat_g": "fat",
    "satfat_g": "saturated_fat",
    "sodium_mg": "sodium",
    "sugars_g": "sugars",
    "fiber_g": "fiber",
    "protein_g": "protein",
    "carb_g": "carbohydrate",
    "calcium_mg": "calcium",
    "iron_mg": "iron",
    "potassium_mg": "potassium",
    "vitamin_c_mg": "vitamin_c",
}


@pytest.fixture(scope="module")
def imported(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Imported]:
    root = tmp_path_factory.mktemp("sr-legacy")
    file = sr_legacy_zip(root / "sr_legacy.zip")
    (one,) = import_foods(root, file, lambda _read, _total: None)
    return root, one


@whole_release
def test_the_counts_are_the_published_ones(imported: tuple[Path, Imported]) -> None:
    """references.md 11 b (C): 14,449 portions, 18 with amount 0; 7,793 foods."""
    assert imported[1].foods == 7793
    assert imported[1].portions == 14_449 - 18
    assert imported[1].weightless == 18


@whole_release
def test_every_value_of_every_food_is_the_official_one(imported: tuple[Path, Imported]) -> None:
    compared = Counter[str]()
    with opened_index(imported[0]) as index:
        for row in reference_values():
            found = record(index, int(row["fdc_id"]))
            assert found is not None
            assert found.description == " ".join(row["description"].split()) or row["description"]
            for column, figure in FIGURE_OF.items():
                official = Decimal(row[column]) if row[column] else None
                assert found.per_100g[figure] == official, (row["fdc_id"], figure)
                compared[column] += official is not None
    assert set(compared) == set(NUTRIENT_OF)
    assert min(compared.values()) > 5900  # 1,816 of 7,793 have no sugars: references.md 11 b (C)


@whole_release
def test_every_portion_weighs_what_the_official_file_says(imported: tuple[Path, Imported]) -> None:
    official: dict[int, list[tuple[str, Decimal]]] = {}
    with (PUBLISHED / "food_portion.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            if Decimal(row["amount"]):
                words = f"{row['amount']} {row['modifier']}".split()
                official.setdefault(int(row["fdc_id"]), []).append(
                    (" ".join(words), Decimal(row["gram_weight"]))
                )
    with opened_index(imported[0]) as index:
        for fdc, portions in official.items():
            found = record(index, fdc)
            assert found is not None
            assert [(one.wording, one.grams) for one in found.portions] == portions


@pytest.fixture(scope="module")
def of_the_library(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with an index of the records of the library's foods, from the copy of them."""
    root = tmp_path_factory.mktemp("library")
    import_foods(root, sr_legacy_zip(root / "some.zip", tables=COPY), lambda _read, _total: None)
    return root


def site(folder: Path) -> Path:
    shutil.copytree(SITE / "site_data", folder / "site_data")
    return folder


def index_for(root: Path, made: Path) -> None:
    (root / ".cache").mkdir()
    shutil.copyfile(made / INDEX, root / INDEX)


def test_a_refresh_changes_nothing_in_our_library(of_the_library: Path, tmp_path: Path) -> None:
    """So every figure and every weight in site_data/foods.yaml is that of its record."""
    root = site(tmp_path)
    index_for(root, of_the_library)
    before = (root / "site_data/foods.yaml").read_bytes()
    compared = refresh_foods(root)
    assert compared.changes == compared.gone == compared.unweighed == compared.unread == ()
    assert (root / "site_data/foods.yaml").read_bytes() == before


def test_a_refresh_fills_in_what_an_older_file_lacks(of_the_library: Path, tmp_path: Path) -> None:
    """From a file without the minerals and vitamin C to ours, byte for byte."""
    root = site(tmp_path)
    index_for(root, of_the_library)
    file = root / "site_data/foods.yaml"
    ours = file.read_text("utf-8")
    file.write_text(re.sub(r", calcium: [^}]*", "", ours), "utf-8")
    compared = refresh_foods(root)
    assert compared.changes == ()
    assert len(compared.missing) == ours.count("    fdc: ")
    assert file.read_text("utf-8") == ours


def test_a_refresh_writes_the_figures_of_a_newer_release_and_nothing_else(tmp_path: Path) -> None:
    root = site(tmp_path)
    changed = {("171688", "1008"): "53", ("171688", "1079"): ""}
    newer = sr_legacy_zip(root / "newer.zip", changed, COPY)
    import_foods(root, newer, lambda _read, _total: None)
    before = (root / "site_data/foods.yaml").read_text("utf-8").splitlines()
    compared = refresh_foods(root)
    after = (root / "site_data/foods.yaml").read_text("utf-8").splitlines()
    told = [(one.food, one.what, one.old, one.new) for one in compared.changes]
    assert told == [
        ("apple-raw", "energy", "52", "53"),  # references.md 3.4 (R): 52 in SR Legacy
        ("apple-raw", "fiber", "2.4", "no value"),
    ]
    different = [(old, new) for old, new in zip(before, after, strict=True) if old != new]
    assert len(different) == 1
    assert "energy: 53" in different[0][1]
    assert "fiber: no value" in different[0][1]
    assert refresh_foods(root).changes == ()
