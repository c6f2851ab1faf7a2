"""Every food gives what its published record gives, weighed and rounded."""

from __future__ import annotations

import json
from collections import defaultdict
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import TypedDict

import pytest

from generator.compute.label import label_value
from generator.model.food import Food
from generator.model.measure import Measure
from tests.project import library
from tests.reference import COLUMNS, rows

PUBLISHED = json.loads(
    (Path(__file__).parents[1] / "examples" / "foods.json").read_text(encoding="utf-8")
)["foods"]


class FoodCase(TypedDict):
    """A row of foods.json."""

    food: str
    amount: str
    fdc: int
    ndb: str
    kcal_100g: str
    protein: str
    fat: str
    carbohydrate: str
    calcium: str
    iron: str
    potassium: str
    vitamin_c: str
    grams: str
    kcal: str
    label: str


def kcal(food: Food, amount: str) -> Fraction:
    """Exact energy of an amount."""
    serving, per_100g = food.serving(amount), food.value(Measure.ENERGY)
    assert serving is not None, f"{amount} is no portion of {food.id}"
    assert per_100g is not None
    return Fraction(per_100g) * serving.grams / 100


@pytest.mark.parametrize("case", PUBLISHED, ids=lambda case: case["food"])
def test_published_rows(case: FoodCase) -> None:
    """Values for 100 g and portion weights R, minerals and vitamin C S; portion energy and label value C."""
    food = library().foods[case["food"]]
    held, serving = food.entry.per_100g, food.serving(case["amount"])
    assert food.entry.fdc == case["fdc"]
    assert held.energy == Decimal(case["kcal_100g"])
    assert held.protein == Decimal(case["protein"])
    assert held.fat == Decimal(case["fat"])
    assert held.carbohydrate == Decimal(case["carbohydrate"])
    for figure in ("calcium", "iron", "potassium", "vitamin_c"):
        assert str(getattr(held, figure)) == case[figure]
    assert serving is not None
    assert serving.grams == Fraction(case["grams"])
    exact = kcal(food, case["amount"])
    assert abs(exact - Fraction(case["kcal"])) <= Fraction("0.05")  # printed to a tenth
    assert label_value(Measure.ENERGY, exact).value == Decimal(case["label"])


def test_all_published_rows_are_here() -> None:
    assert len({case["food"] for case in PUBLISHED}) == 42


def test_no_record_stands_twice() -> None:
    records = [food.entry.fdc for food in library().foods.values()]
    assert len(records) == len(set(records))


def test_every_value_is_its_record_s_and_a_blank_is_no_value() -> None:
    """Against USDA SR Legacy, April 2018: a blank is no value, never zero."""
    published = {row["fdc_id"]: row for row in rows("values_per_100g.csv")}
    wrong = []
    for food in library().foods.values():
        row = published[str(food.entry.fdc)]
        for field, column in COLUMNS.items():
            ours, theirs = getattr(food.entry.per_100g, field), row[column]
            if ours != ("no value" if theirs == "" else Decimal(theirs)):
                wrong.append(f"{food.id} {field}: {ours}, published {theirs or 'blank'}")
    assert wrong == []


def test_every_portion_weighs_what_its_record_says() -> None:
    """Against USDA SR Legacy: the weight belongs to the record's own amount, which may not be 1."""
    weights: defaultdict[str, set[Fraction]] = defaultdict(set)
    for row in rows("food_portion.csv"):
        weights[row["fdc_id"]].add(Fraction(row["gram_weight"]))
    wrong = [
        f"{food.id}, {portion.record}: {portion.grams} g"
        for food in library().foods.values()
        for portion in food.entry.portions
        if portion.record not in PLAIN_WEIGHTS
        and Fraction(portion.grams) / portion.of_record[0] not in weights[str(food.entry.fdc)]
    ]
    assert wrong == []


PLAIN_WEIGHTS = {"28.35 g": "1 oz", "85 g": "3 oz"}
"""An ounce and three, as SR Legacy weighs them of other foods (171477, 175168 and more) [R]; NIST
Handbook 44 has 28.349523125 g [M]. For records that weigh no amount anybody eats."""


def test_a_plain_weight_is_called_what_it_is() -> None:
    named = {
        (portion.record, portion.names["en"])
        for food in library().foods.values()
        for portion in food.entry.portions
        if portion.record.endswith(" g")
    }
    assert named == set(PLAIN_WEIGHTS.items())


def test_a_part_of_a_record_s_amount_says_which() -> None:
    """A cup of kimchi weighs 150 g: USDA SR Legacy 170392 (status R)."""
    quarter = next(one for one in library().foods["kimchi"].entry.portions if one.grams < 100)
    assert quarter.of_record == (Fraction(1, 4), "1 cup")
    assert quarter.grams * 4 == 150


def test_every_record_keeps_its_title() -> None:
    """Against USDA SR Legacy; a note in brackets about a distribution program may be left out."""
    published = {row["fdc_id"]: row["description"] for row in rows("food.csv")}
    wrong = [
        f"{food.id}: {food.entry.record}, published {published[str(food.entry.fdc)]}"
        for food in library().foods.values()
        if not published[str(food.entry.fdc)].startswith(food.entry.record[:20])
    ]
    assert wrong == []


def test_every_portion_can_be_asked_for_by_its_own_name() -> None:
    for food in library().foods.values():
        for portion in food.entry.portions:
            serving = food.serving(portion.names["en"])
            assert serving is not None, f"{food.id}, {portion.names['en']}"
            assert serving.grams == Fraction(portion.grams), f"{food.id}, {portion.names['en']}"


@pytest.mark.parametrize(
    ("amount", "grams"),
    [
        ("1 medium", "182"),
        ("2 medium", "364"),
        ("1/2 medium", "91"),
        ("1 1/2 medium", "273"),
        ("0.5 medium", "91"),
        ("1/3 medium", "182/3"),
        ("150 g", "150"),
        ("150g", "150"),
        ("12.5 g", "12.5"),
    ],
)
def test_amounts_are_weighed_exactly(amount: str, grams: str) -> None:
    """A medium apple weighs 182 g: USDA SR Legacy 171688 (status R)."""
    serving = library().foods["apple-raw"].serving(amount)
    assert serving is not None
    assert serving.grams == Fraction(grams)


@pytest.mark.parametrize(
    "amount",
    [
        "",
        "medium",
        "1",
        "0 medium",
        "0 g",
        "-1 medium",
        "1/0 medium",
        "1 huge",
        "1e3 g",
        "½",
        "1 2",
    ],
)
def test_amounts_that_cannot_be_weighed_are_nothing(amount: str) -> None:
    assert library().foods["apple-raw"].serving(amount) is None


def test_an_endless_number_is_no_amount() -> None:
    assert library().foods["apple-raw"].serving("9" * 5000 + " g") is None


def test_the_gram_weight_belongs_to_the_record_s_own_amount() -> None:
    """Half a cup of broccoli is 78 g, so a cup is 156: USDA SR Legacy 169967 (status R)."""
    serving = library().foods["broccoli-boiled"].serving("1 cup chopped")
    assert serving is not None
    assert serving.grams == 156


def test_a_plain_baked_potato_is_about_160_kcal() -> None:
    """Common practice, no source: every table of foods says about this."""
    assert abs(kcal(library().foods["potato-baked"], "1 medium") - 160) <= 10


@pytest.mark.parametrize("way", ["patty-{}-broiled", "patty-{}-pan-broiled", "crumbles-{}"])
def test_leaner_beef_holds_less_energy_in_the_same_cooked_weight(way: str) -> None:
    """Common practice, no source: what the two numbers on the package are for."""
    foods = library().foods
    lean, other = (foods["beef-" + way.format(percent)] for percent in (90, 80))
    assert kcal(lean, "85 g") < kcal(other, "85 g")


def test_fat_holds_more_energy_than_anything_else() -> None:
    """Common practice, no source: oil is all fat, at 9 kcal a gram (21 CFR 101.9(c)(1)(i), status S)."""
    foods = library().foods.values()
    assert max(food.value(Measure.ENERGY) or 0 for food in foods) <= 902
