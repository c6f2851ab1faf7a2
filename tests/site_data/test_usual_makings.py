"""Foods tell of the allergens they are usually made with, also where their record has no word of it."""

from __future__ import annotations

import pytest

from generator.model.food import Allergen
from tests.project import library

USUALLY = {
    # The record is "homemade": wheat germ and nuts are in most recipes, and it holds 24 g of fat.
    "granola-homemade": "tree nuts, wheat",
    "bagel-plain": "wheat, sesame",  # "includes onion, poppy, sesame" [R]
    "chicken-sandwich-grilled": "eggs, wheat",  # "spread" [R] is mostly mayonnaise
    # Soy sauce, brewed from soy and wheat; the soy sauce of the records says so [R].
    "rice-fried": "wheat, soybeans",
    "chicken-and-vegetables-stir-fry": "wheat, soybeans",
    "soup-hot-and-sour": "wheat, soybeans",
    # Thickened with flour.
    "gravy-beef": "wheat",
    "soup-clam-chowder": "milk, wheat",
    "soup-cream-of-mushroom": "milk, wheat",
    "potatoes-au-gratin": "milk, wheat",
    # Wrappers and doughs.
    "soup-wonton": "eggs, wheat",
    "egg-roll": "eggs, wheat",
    "cinnamon-roll": "milk, eggs, wheat",
    "bunuelo": "milk, eggs, wheat",
    "pastry-guava": "milk, eggs, wheat",
    "banana-bread": "milk, eggs, wheat",
    "cookie-oatmeal-raisin": "milk, eggs, wheat",
    "veggie-burger": "wheat, soybeans",
    # Most of it is made where milk chocolate is, and holds some.
    "chocolate-dark": "milk",
}
"""How these are usually made is from memory, where no [R] stands; a label can say otherwise."""
PLAINLY_NOT = {
    # FDA, edition 5 of its questions and answers on allergens, January 2025: none of the tree nuts [S].
    "coconut-milk-canned": "tree nuts",
    "coconut-water": "tree nuts",
    # Highly refined oil is exempt (FALCPA, 21 USC 321(qq)(2)) [from memory].
    "oil-vegetable": "soybeans",
    # A clam is no crustacean.
    "soup-clam-chowder": "shellfish",
}


def named(said: str) -> set[Allergen]:
    return {Allergen(one) for one in said.split(", ")}


@pytest.mark.parametrize(("food", "said"), USUALLY.items())
def test_what_a_food_is_usually_made_with_is_told(food: str, said: str) -> None:
    assert named(said) <= set(library().foods[food].entry.contains)


@pytest.mark.parametrize(("food", "said"), PLAINLY_NOT.items())
def test_what_is_no_allergen_of_the_law_is_not_told(food: str, said: str) -> None:
    assert named(said).isdisjoint(library().foods[food].entry.contains)


CHOKES = """
    marshmallows caramels gumdrops jelly-beans fruit-snacks tamarind-candy raisins dates-medjool
    apricot-dried figs-dried apple-dried prunes cranberries-dried sunflower-seeds pumpkin-seeds
    pretzels-hard pork-rinds cheese-puffs granola-homemade granola-bar-hard sausage-pork pepperoni
    olives-green blueberries-raw water-chestnuts-canned snow-peas-raw watermelon-raw cantaloupe-raw
    mango-raw pineapple-raw cheese-cheddar cheese-swiss chocolate-milk-bar"""
"""Hard, round, sticky or tough, and chunks: references.md 4.1, and the lists named in
``compute/record_words.py``."""


@pytest.mark.parametrize("food", CHOKES.split())
def test_what_can_choke_a_small_child_is_told(food: str) -> None:
    assert library().foods[food].entry.choking


SMALL_ENOUGH = {
    "cheese-queso-fresco": 31,
    "tempeh": 85,
    "gravy-beef": 60,
    "cheese-cottage": 113,
    "tamarind-raw": 30,
    "radish-raw": 58,
    "burrito-bean": 109,
    "spaghetti-meat-sauce": 277,
    "honey": 7,
    "kimchi": 38,
}
"""Foods whose records weigh mostly more than anybody eats at once, and grams of a portion that somebody does."""


@pytest.mark.parametrize(("food", "grams"), SMALL_ENOUGH.items())
def test_there_is_a_portion_somebody_eats(food: str, grams: int) -> None:
    assert min(one.grams for one in library().foods[food].entry.portions) <= grams


def test_a_slice_of_pepperoni_is_not_all_there_is() -> None:
    grams = [one.grams for one in library().foods["pepperoni"].entry.portions]
    assert max(grams) >= 28
