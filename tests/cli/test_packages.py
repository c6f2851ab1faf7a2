"""A package from its barcode into the library, without its brand."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.read.library import read_library
from tests.read.fooddata.full_layout import FULL
from tests.read.fooddata.official_zip import small_zip

SITE = Path(__file__).parents[2]
FILE = "site_data/foods.yaml"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    shutil.copytree(SITE / "site_data", tmp_path / "site_data")
    said = run(tmp_path, "import", str(small_zip(tmp_path / "full.zip", FULL)))
    assert "branded foods, published 2026-04-16: 3 foods, 7 figures, 2 portions." in said.output
    assert "Left out: 1 package whose serving is given neither in grams nor in" in said.output
    assert "Left out: 1 figure of labels that" in said.output
    return tmp_path


def run(root: Path, *words: str, code: int = 0, columns: int = 80) -> Result:
    runner = CliRunner(env={"COLUMNS": str(columns)})
    result = runner.invoke(commands, ["foods", *words, "--root", str(root)])
    assert result.exit_code == code, result.output
    return result


def test_a_package_is_found_and_added_under_a_plain_name(root: Path) -> None:
    said = run(root, "find", "0", "12345", "67890", "5").output
    assert "2 bars (42 g)" in said
    assert 'python3 generator foods add 402 --name "A plain name"' in said
    run(root, "add", "012345678905", "--name", "Oat bar with cane sugar", "--allergens", "none")
    entry = read_library(root).foods["oat-bar-with-cane-sugar"].entry
    assert entry.fdc == 402
    assert entry.record == "Package, Snack bars"
    assert entry.release == "Label data in USDA FoodData Central, branded foods, 2026-04-16"
    assert [(one.names["en"], one.grams) for one in entry.portions] == [("2 bars", 42)]


def test_an_entry_of_a_package_says_that_its_figures_are_a_label_s(root: Path) -> None:
    run(root, "add", "402", "--name", "Oat bar")
    text = (root / FILE).read_text("utf-8")
    assert "# figures from the label of a package, rounded there; brand left out" in text
    for brand in ("zanzibrand", "owner of all", "subname"):
        assert brand not in text.lower()


def test_a_refresh_finds_a_package_as_it_was_added(root: Path) -> None:
    run(root, "add", "402", "--name", "Oat bar")
    assert "No figures changed" in run(root, "refresh").output


def test_a_package_without_a_plain_name_is_asked_for_one(root: Path) -> None:
    before = (root / FILE).read_bytes()
    said = run(root, "add", "012345678905", code=1).output
    assert "the package 402 needs a plain name of yours, without the brand" in said
    assert 'python3 generator foods add 402 --name "Oat bar"' in said
    assert (root / FILE).read_bytes() == before


def test_millilitres_are_not_made_into_grams(root: Path) -> None:
    """46 kcal in 100 ml, 240 ml: 110.4 kcal, on a label 110 (21 CFR 101.9(c)(1))."""
    before = (root / FILE).read_bytes()
    said = run(root, "add", "4006381333931", "--name", "Pear drink", code=1).output
    assert "its label does not say what a milliliter weighs" in said
    item = '{name: "Pear drink, 1 serving (240 ml)", value: 110, source: "Label data in USDA'
    assert item in " ".join(said.split())
    assert (root / FILE).read_bytes() == before


def test_a_number_read_wrongly_is_told(root: Path) -> None:
    assert "its digits do not fit together" in run(root, "find", "012345678906").output
    said = run(root, "add", "012345678906", "--name", "Bar", code=1).output
    assert "its last digit does not fit the others" in said


def test_negative_carbohydrate_is_kept_as_published(root: Path) -> None:
    """references.md 11.1 (S): Foundation foods hold small negative carbohydrate by difference."""
    run(root, "add", "201", "--id", "thigh", "--allergens", "none")
    text = (root / FILE).read_text("utf-8")
    assert "carbohydrate: -0.15" in text
    assert "# energy by Atwater's general factors (nutrient 2047)" in text
    entry = read_library(root).foods["thigh"].entry
    assert entry.per_100g.value("fiber") is not None, "from 2033, for there is no 1079"


def test_a_food_of_the_survey_by_its_code(root: Path) -> None:
    run(root, "add", "41102010", "--id", "beans-of-survey", "--allergens", "none")
    assert read_library(root).foods["beans-of-survey"].entry.fdc == 301


@pytest.mark.parametrize("columns", [40, 60, 80, 200])
def test_no_column_is_too_narrow_to_read(root: Path, columns: int) -> None:
    """Two data sets side by side once left a column of one letter at 80 signs."""
    said = run(root, "find", "beans", "--measure", "sodium", columns=columns).output
    table = said.split("\n\n")[0].splitlines()
    assert max(map(len, table)) <= columns
    narrow = [line for line in table if 0 < len(line.strip()) < 3]
    assert narrow == []
    assert "black-beans-boiled" in said, "an id is never broken"


@pytest.mark.parametrize("columns", [30, 50, 64, 78, 80, 100, 200])
def test_no_id_and_no_value_is_ever_broken(root: Path, columns: int) -> None:
    """Reduced-sodium chicken noodle soup, 1 cup: 100 kcal and 460 mg; its id is the longest."""
    words = ("find", "soup", "--measure", "sodium", "--from", "460", "--to", "460")
    said = run(root, *words, columns=columns).output.split("\n\n")[0]
    assert "soup-chicken-noodle-reduced-sodium" in said
    assert "460" in said.split("soup-chicken-noodle-reduced-sodium", 1)[1]
    if columns >= 78:
        assert said.startswith("id or number")


def test_foods_are_found_by_what_a_portion_holds(root: Path) -> None:
    said = run(root, "find", "soup", "--measure", "sodium", "--from", "300", "--to", "500").output
    rows = [line.split() for line in said.split("\n\n")[0].splitlines()[1:]]
    values = [int(row[-1].replace(",", "")) for row in rows if row[-1].replace(",", "").isdigit()]
    assert values
    assert all(300 <= value <= 500 for value in values)


def test_a_program_gets_a_list(root: Path) -> None:
    said = run(root, "find", "012345678905", "--measure", "sodium", "--json").output
    (bar,) = json.loads(said)
    assert (bar["call"], bar["portion"], bar["package"]) == ("402", "2 bars (42 g)", True)
    assert bar["values"] == {"energy": 180.0, "sodium": None}, "433 kcal in 100 g, 42 g: 181.86"
    assert json.loads(run(root, "find", "zzzz", "--json").output) == []


def test_what_no_food_holds_is_told(root: Path) -> None:
    said = run(root, "find", "soup", "--measure", "sodium", "--from", "90000").output
    assert "Nothing that fits “soup” holds so much" in said


def test_a_bound_that_is_no_number_is_a_sentence(root: Path) -> None:
    said = run(root, "find", "soup", "--from", "nan", code=2).output
    assert "a bound is a number such as 300" in said


def test_how_many_more_there_are_is_said(root: Path) -> None:
    few = run(root, "find", "cheese", "--most", "3").output
    many = run(root, "find", "cheese", "--most", "200", columns=200).output
    rows = len(many.split("\n\n")[0].splitlines()) - 1
    assert f"{rows - 3} more." in few
    assert "more." not in many.split("\n\n", 1)[1]
