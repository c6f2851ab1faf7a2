"""What can be true of a food: held against the check foods and every food of the library."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest

from generator.compute.plausible import (
    TOLERANCE,
    atwater_sum,
    most_possible,
    off_by,
    two_days_worth,
)
from generator.model.measure import Measure
from tests.check_foods import CHECK_FOODS, CheckFood
from tests.worked import library


@pytest.mark.parametrize("food", CHECK_FOODS, ids=lambda food: food.name)
def test_sum_of_a_published_row(food: CheckFood) -> None:
    """Protein, fat and carbohydrate USDA SR28 and SR Legacy [R]; factors 4-4-9, 101.9(c)(1)(i) [S]; sum [C]."""
    parts = atwater_sum(Decimal(food.protein), Decimal(food.carbohydrate), Decimal(food.fat))
    assert abs(parts - Decimal(food.atwater)) <= Decimal("0.05")
    assert abs(off_by(Decimal(food.kcal), parts)) <= TOLERANCE


@pytest.mark.parametrize("food", CHECK_FOODS, ids=lambda food: food.name)
def test_no_published_food_exceeds_pure_fat(food: CheckFood) -> None:
    assert Fraction(food.kcal) <= most_possible(Measure.ENERGY, Fraction(100))


@pytest.mark.parametrize("measure", Measure)
def test_no_food_of_the_library_holds_more_than_it_can(measure: Measure) -> None:
    for food in library().foods.values():
        held = food.value(measure)
        if held is not None:
            assert held <= most_possible(measure, Fraction(100)), food.id


def test_salt_itself_is_just_possible() -> None:
    """Table salt, USDA SR Legacy, FDC 173468: 38,758 mg of sodium in 100 g [R]."""
    most = most_possible(Measure.SODIUM, Fraction(100))
    assert 38_758 <= most < 39_400


def test_pure_fat_is_just_possible() -> None:
    """The densest records of SR Legacy, lard and other animal fats, hold 902 kcal in 100 g [R]."""
    assert most_possible(Measure.ENERGY, Fraction(100)) == 902


@pytest.mark.parametrize(
    ("measure", "grams", "most"),
    [
        (Measure.SUGARS, "30", "30"),
        (Measure.FIBER, "2", "2"),
        (Measure.PROTEIN, "100", "100"),
        # A label may round up, 21 CFR 101.9(c)(1), (c)(2), (c)(6) [S]: 126.28, 4.8 and 5.6
        (Measure.ENERGY, "14", "130"),
        (Measure.SATURATED_FAT, "4.8", "5"),
        (Measure.SUGARS, "5.6", "6"),
        # Atomic weights from memory [M]: calcium is 40.04 % of its carbonate, potassium 52.45 %
        # of its chloride; shown to the nearest 10 mg
        (Measure.CALCIUM, "10.009", "4010"),
        (Measure.POTASSIUM, "7.455", "3910"),
        (Measure.IRON, "2", "2000"),
        (Measure.VITAMIN_C, "0.5", "500"),
    ],
)
def test_most_possible(measure: Measure, grams: str, most: str) -> None:
    assert most_possible(measure, Fraction(grams)) == Fraction(most)


def test_two_days_worth() -> None:
    """Twice the reference diet of 2,000 kcal [M] and twice the Daily Values [S]."""
    assert two_days_worth(Measure.ENERGY) == 4000
    assert two_days_worth(Measure.SODIUM) == 4600
    assert two_days_worth(Measure.CALCIUM) == 2600


def test_refusals() -> None:
    with pytest.raises(ValueError, match="less than nothing"):
        atwater_sum(Decimal(-1), Decimal(0), Decimal(0))
    with pytest.raises(ValueError, match="from nothing"):
        off_by(Decimal(10), Decimal(0))
    with pytest.raises(ValueError, match="cannot weigh"):
        most_possible(Measure.ENERGY, Fraction(0))


def test_water_has_no_energy_and_no_parts() -> None:
    assert off_by(Decimal(0), Decimal(0)) == 0


def test_common_knowledge_holds() -> None:
    """Common practice, no source: a plain baked potato holds about 160 kcal; leaner beef holds less."""
    by_name = {food.name: food for food in CHECK_FOODS}
    potato = by_name["Potato, baked, flesh+skin"]
    assert Decimal(potato.kcal) * Decimal(potato.grams) / 100 == pytest.approx(160, abs=5)
    beef = [Decimal(food.kcal) for food in CHECK_FOODS if "patty, broiled" in food.name]
    assert beef == sorted(beef)
