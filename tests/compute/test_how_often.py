"""How often a food fits in follows the published shares, and says which one decided."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.how_often import Frequency, HowOften, Override, how_often
from generator.compute.sugars import counts_as_added
from generator.model.food import Food, FoodEntry, Per100g, Portion
from tests.worked import library

MOST, SOME, NOW = Frequency


def first_portion(food_id: str) -> HowOften:
    food = library().foods[food_id]
    return how_often(food, Fraction(food.entry.portions[0].grams))


def invented(
    group: str = "grains",
    *,
    record: str = "Invented",
    drink: bool = False,
    **values: Decimal | str,
) -> Food:
    held = dict.fromkeys(Per100g.model_fields, Decimal(0)) | values
    portion = Portion(names={"en": "1 cup"}, grams=Decimal(100), record="1 cup")
    entry = FoodEntry(
        names={"en": "Invented"},
        group=group,
        fdc=1,
        record=record,
        per_100g=Per100g.model_validate(held),
        portions=(portion,),
        drink=drink,
    )
    return Food("invented", entry, "none")


@pytest.mark.parametrize(
    ("food", "word", "because"),
    [
        # Values USDA SR Legacy [R], shares FDA [S], Daily Values 21 CFR 101.9 [S], percents [C]
        ("lentils-boiled", MOST, "5 % or less"),
        ("broccoli-boiled", MOST, "5 % or less"),
        ("milk-skim", MOST, "5 % or less"),
        ("white-bread", SOME, "sodium 6 %"),  # 490 mg × 0.29 = 142 mg
        ("cheese-cheddar", NOW, "saturated fat 27 %"),  # 18.867 g × 0.2835 = 5.3 g
        ("milk-whole", NOW, "saturated fat 23 %"),  # 1.865 g × 2.44 = 4.6 g
        ("cola", NOW, "sugars 74 %"),
        ("taco-shell", SOME, "energy density 4.76"),
    ],
)
def test_word_and_rule(food: str, word: Frequency, because: str) -> None:
    found = first_portion(food)
    assert found.frequency is word
    assert because in found.rule


@pytest.mark.parametrize(
    ("values", "word"),
    [
        ({"sodium": "115"}, MOST),  # 5 %
        ({"sodium": "138"}, SOME),  # 6 %
        ({"saturated_fat": "3.8"}, SOME),  # 19 %
        ({"saturated_fat": "4"}, NOW),  # 20 %
        ({"sugars": "10"}, NOW),  # 20 %
        ({"energy": "400"}, MOST),  # 4.0 kcal/g is medium
        ({"energy": "401"}, SOME),
        ({"energy": "401", "sodium": "460"}, NOW),
    ],
)
def test_edges(values: dict[str, str], word: Frequency) -> None:
    food = invented(**{name: Decimal(value) for name, value in values.items()})
    assert how_often(food, Fraction(100)).frequency is word


def test_energy_density_says_nothing_about_drinks() -> None:
    assert how_often(invented(energy=Decimal(401), drink=True), Fraction(100)).frequency is MOST


def test_a_blank_is_not_zero() -> None:
    found = how_often(invented(sodium="no value"), Fraction(100))
    assert found.frequency is None
    assert "no value for sodium" in found.rule


def test_a_blank_does_not_hide_a_high_share() -> None:
    found = how_often(invented(sodium="no value", saturated_fat=Decimal(4)), Fraction(100))
    assert found.frequency is NOW


@pytest.mark.parametrize(
    ("food", "counted"),
    [
        # 21 CFR 101.9(c)(6)(iii): sugars of whole fruit and of milk are not added [M]
        ("banana-raw", False),
        ("raisins", False),
        ("carrot-cooked", False),
        ("milk-lowfat", False),
        ("yogurt-plain-lowfat", False),
        ("milk-chocolate", True),
        ("yogurt-fruit-lowfat", True),
        ("milk-condensed", True),
        ("lentils-boiled", False),
        ("rice-brown-cooked", False),
        ("baked-beans-canned", True),
        ("peanut-butter", True),
        ("bagel-plain", True),
        ("orange-juice", True),  # with the free sugars of WHO 2015 [M]
        ("cola", True),
    ],
)
def test_which_sugars_count(food: str, counted: bool) -> None:
    assert counts_as_added(library().foods[food]) is counted


@pytest.mark.parametrize(
    ("record", "counted"),
    [
        ("Peaches, canned, heavy syrup, drained", True),
        ("Cranberries, dried, sweetened", True),
        ("Applesauce, canned, unsweetened", False),
        ("Peaches, canned, juice pack", False),
        ("Strawberries, frozen, without added sugar", False),
    ],
)
def test_fruit_that_was_sweetened_is_found_by_its_record(record: str, counted: bool) -> None:
    assert counts_as_added(invented("fruit", record=record)) is counted


def test_an_override_keeps_what_was_computed() -> None:
    food = library().foods["milk-whole"]
    said = Override(SOME, "Whole milk is what the children under two of our families drink.")
    found = how_often(food, Fraction(244), said)
    assert (found.frequency, found.rule, found.computed) == (SOME, said.reason, NOW)


def test_an_override_needs_its_reason() -> None:
    with pytest.raises(ValueError, match="needs its reason"):
        how_often(library().foods["milk-whole"], Fraction(244), Override(SOME, " "))


def test_a_portion_weighs_something() -> None:
    with pytest.raises(ValueError, match="cannot weigh 0 g"):
        how_often(library().foods["cola"], Fraction(0))


@given(st.sampled_from(sorted(library().foods)), st.integers(1, 500), st.integers(1, 500))
def test_a_larger_portion_is_never_more_often(food_id: str, grams: int, extra: int) -> None:
    food = library().foods[food_id]
    small, large = (how_often(food, Fraction(g)).frequency for g in (grams, grams + extra))
    order = list(Frequency)
    if small is not None and large is not None:
        assert order.index(large) >= order.index(small)


def test_no_word_judges() -> None:
    for food in library().foods.values():
        rule = how_often(food, Fraction(food.entry.portions[0].grams)).rule
        assert not {"good", "bad", "healthy", "unhealthy"} & set(rule.lower().split())
