"""The library of foods: what stands in it raw is eaten raw."""

from __future__ import annotations

import re
from collections import Counter

import pytest

from generator.model.food import Food
from generator.read.fooddata.search import Fit, find_in_library
from tests.worked import library

EATEN_RAW = {
    "fruit, fresh or dried, is eaten as it is": """
        apple-dried apple-raw apricot-dried apricot-raw avocado-raw banana-raw blackberries-raw
        blueberries-raw cantaloupe-raw cherries-raw clementine-raw figs-dried grapefruit-raw
        grapes-raw guava-raw honeydew-raw jackfruit-raw kiwi-raw litchi-raw mandarin-raw mango-raw
        nectarine-raw orange-raw papaya-raw passion-fruit-raw peach-raw pear-raw pineapple-raw
        plum-raw pomegranate-raw prunes raspberries-raw strawberries-raw tamarind-raw
        watermelon-raw""",
    "the juice of a fruit": "orange-juice",
    "salad and raw vegetable sticks": """
        bell-pepper-green-raw bell-pepper-red-raw broccoli-raw cabbage-raw carrot-raw
        cauliflower-raw celery-raw cucumber-raw jalapeno-raw jicama-raw kale-raw lettuce-iceberg
        lettuce-romaine mushrooms-raw onion-raw radish-raw snow-peas-raw spinach-raw tomato-raw""",
    "seaweed, as a wrap or soaked in a salad": "seaweed-nori seaweed-wakame",
    "cooked by its maker: raw means not fried, unprepared means not warmed": "tofu-firm veggie-burger",
    "fried by its maker, some eat it dry": "soup-ramen-dry",
}
"""Why a food may stand in the library by a raw record; common practice, no source."""

RAW = re.compile(r"\b(raw|uncooked|unprepared|dough|dry)\b", re.IGNORECASE)
COOKED = re.compile(r"dry heat|dry[- ]roasted|dry mix, prepared", re.IGNORECASE)


def test_a_food_that_is_eaten_only_cooked_does_not_stand_raw() -> None:
    """Raw cassava gives off cyanide, raw pork sausage and raw sprouts carry germs (M)."""
    raw = {
        food.id
        for food in library().foods.values()
        if RAW.search(COOKED.sub("", f"{food.entry.record}; {food.entry.names['en']}"))
    }
    reasons = {food for foods in EATEN_RAW.values() for food in foods.split()}
    assert raw - reasons == set(), "foods that are eaten only cooked, or want a reason"
    assert reasons - raw == set(), "a reason for a food that is not raw"


@pytest.mark.parametrize("language", ["en", "es"])
def test_no_two_foods_have_one_name(language: str) -> None:
    names = Counter(food.entry.names[language].casefold() for food in library().foods.values())
    assert [name for name, times in names.items() if times > 1] == []


SECOND = re.compile(r"(\S+) \(([^)]+)\)")
"""A name, and the name of another region behind it: *Remolacha (betabel) cocida*."""


@pytest.mark.parametrize(
    "food",
    [
        pytest.param(food, id=food.id)
        for food in library().foods.values()
        if SECOND.search(food.entry.names["es"])
    ],
)
def test_a_food_is_found_by_the_names_of_either_region(food: Food) -> None:
    for name in (part for one in SECOND.findall(food.entry.names["es"]) for part in one):
        found = {one.id: fit for fit, one in find_in_library(library().foods, name)}
        assert found[food.id] <= Fit.WORDS, name
