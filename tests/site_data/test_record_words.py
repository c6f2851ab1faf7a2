"""What a record's own words say of care stands in the entry of its food, in the whole library."""

from __future__ import annotations

import pytest

from generator.compute.record_words import allergens_said, choking_shape, eaten_cooked
from generator.model.food import Allergen
from tests.project import library
from tests.reference import rows

FOODS = library().foods


def test_somebody_has_looked_at_every_food_of_the_library() -> None:
    assert [food.id for food in FOODS.values() if food.entry.not_looked_at] == []


def test_every_allergen_that_a_record_speaks_of_is_in_its_entry() -> None:
    """The nine of FALCPA 2004 and the FASTER Act of 2021 [S], by the words of SR Legacy's titles."""
    titles = {int(row["fdc_id"]): row["description"] for row in rows("food.csv")}
    missing = {
        food.id: left
        for food in FOODS.values()
        if (left := {*allergens_said(titles[food.entry.fdc])} - {*food.entry.contains})
    }
    assert missing == {}


def test_every_shape_that_can_choke_is_in_its_entry() -> None:
    """The lists are named beside the table of shapes."""
    unlike = {
        food.id: (choking_shape(food.entry.record), food.entry.choking)
        for food in FOODS.values()
        if bool(choking_shape(food.entry.record)) is not food.entry.choking
    }
    assert unlike == {}


def test_no_food_of_the_library_is_raw_that_is_eaten_cooked() -> None:
    shelves = {row["id"]: row["description"] for row in rows("food_category.csv")}
    shelf = {row["fdc_id"]: shelves[row["food_category_id"]] for row in rows("food.csv")}
    raw = [
        food.id
        for food in FOODS.values()
        if eaten_cooked(food.entry.record, shelf[str(food.entry.fdc)]) and not food.entry.raw
    ]
    assert raw == []


@pytest.mark.parametrize(
    ("record", "said"),
    [
        # Titles of SR Legacy [R]
        ("Bagels, plain, enriched (includes onion, poppy, sesame)", {"wheat", "sesame"}),
        ("Soy sauce made from soy and wheat (shoyu)", {"wheat", "soybeans"}),
        ("Fast foods, nachos, with cheese", {"milk"}),
        ("Noodles, egg, enriched, cooked", {"eggs", "wheat"}),
        ("Wheat flour, white, all-purpose, enriched, bleached", {"wheat"}),
        ("Rice noodles, cooked", set()),
        ("Buckwheat groats, roasted, cooked", set()),
        ("Beverages, almond milk, unsweetened, shelf stable", {"tree nuts"}),
        ("Peanut butter, smooth style, with salt", {"peanuts"}),
        ("Snacks, popcorn, caramel-coated, without peanuts", set()),
        # Highly refined oil is exempt (FALCPA, 21 USC 321(qq)(2)) [from memory]
        ("Oil, vegetable, soybean, refined", set()),
        # FDA, edition 5 of its questions and answers, January 2025: coconut is none of the tree nuts [S]
        ("Nuts, coconut milk, canned (liquid expressed from grated meat and water)", set()),
        ("Eggplant, cooked, boiled, drained, without salt", set()),
        ("Carbonated beverage, cream soda", set()),
    ],
)
def test_allergens_said(record: str, said: set[str]) -> None:
    assert set(allergens_said(record)) == {Allergen(name) for name in said}


@pytest.mark.parametrize(
    ("record", "shelf", "raw"),
    [
        # Titles and shelves of SR Legacy [R]
        ("Cassava, raw", "Vegetables and Vegetable Products", True),
        ("Sausage, pork, chorizo, link or ground, raw", "Sausages and Luncheon Meats", True),
        ("Beans, kidney, red, mature seeds, raw", "Legumes and Legume Products", True),
        ("Egg, whole, raw, fresh", "Dairy and Egg Products", True),
        ("Wheat flour, white, all-purpose, enriched, bleached", "Cereal Grains and Pasta", True),
        ("Fish, salmon, sockeye, raw", "Finfish and Shellfish Products", True),
        ("Apples, raw, with skin", "Fruits and Fruit Juices", False),
        ("Carrots, raw", "Vegetables and Vegetable Products", False),
        ("Tofu, raw, firm, prepared with calcium sulfate", "Legumes and Legume Products", False),
        ("Chicken, broilers or fryers, breast, meat only, cooked, roasted", "Poultry Products", False),
        ("Cookies, chocolate chip, refrigerated dough, baked", "Baked Products", False),
        ("Plums, dried (prunes), uncooked", "Fruits and Fruit Juices", False),
    ],
)  # fmt: skip
def test_raw_and_eaten_cooked(record: str, shelf: str, raw: bool) -> None:
    assert eaten_cooked(record, shelf) is raw
