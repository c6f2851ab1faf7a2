"""What a portion brings is what 21 CFR 101.54 and the Daily Values of the label make of its record."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.brings import SOUGHT, Level, Share, what_it_brings
from generator.compute.label import by_rule
from generator.model.food import Food
from generator.model.measure import Measure
from tests.project import library

DAILY_VALUES = {
    # 21 CFR 101.9(c)(8)(iv) and (c)(9), adults and children of 4 years and more [S]; vitamin C [M]
    Measure.SATURATED_FAT: "20",
    Measure.SODIUM: "2300",
    Measure.FIBER: "28",
    Measure.PROTEIN: "50",
    Measure.CALCIUM: "1300",
    Measure.IRON: "18",
    Measure.POTASSIUM: "4700",
    Measure.VITAMIN_C: "90",
}


def share(measure: Measure, held: str) -> Share:
    """A portion that holds so much of one measure."""
    entry = measure.entry
    assert entry.percent
    assert entry.daily_value
    percent = Fraction(held) * 100 / Fraction(entry.daily_value)
    return Share(measure, Fraction(held), entry.daily_value, by_rule(entry.percent, percent))


def test_daily_values() -> None:
    told = [one for one in Measure if one.entry.brings or one.entry.little_or_much]
    assert {one: str(one.entry.daily_value) for one in told} == DAILY_VALUES


@pytest.mark.parametrize(
    ("percent", "shown"),
    [
        # 21 CFR 101.9(c)(8)(iii): 2 % steps to 10, 5 % steps to 50, 10 % above [S]
        ("0.9", 0), ("1", 2), ("2.9", 2), ("3", 4), ("9", 10), ("10", 10),
        ("10.01", 10), ("12.4", 10), ("12.5", 15), ("47.5", 50), ("50", 50),
        ("50.01", 50), ("54.9", 50), ("55", 60), ("104", 100), ("105", 110),
    ],
)  # fmt: skip
@pytest.mark.parametrize(
    "measure", [Measure.CALCIUM, Measure.IRON, Measure.POTASSIUM, Measure.VITAMIN_C]
)
def test_percents_of_vitamins_and_minerals(measure: Measure, percent: str, shown: int) -> None:
    rule = measure.entry.percent
    assert rule
    assert by_rule(rule, Fraction(percent)).value == shown


def test_the_rules_own_example() -> None:
    """(d)(8): 235 mg of potassium, 5.0 percent, are shown as 6 percent [S]."""
    assert share(Measure.POTASSIUM, "235").percent.value == 6


@pytest.mark.parametrize(
    "measure", [Measure.FIBER, Measure.PROTEIN, Measure.SODIUM, Measure.SATURATED_FAT]
)
def test_percents_of_the_others_are_whole(measure: Measure) -> None:
    """21 CFR 101.9(d)(7)(ii): the nearest whole percent [S]; half goes up, as everywhere here."""
    rule = measure.entry.percent
    assert rule
    shown = [by_rule(rule, Fraction(one)).value for one in ("0.49", "0.5", "9.49", "9.5", "120.4")]
    assert shown == [0, 1, 9, 10, 120]


@pytest.mark.parametrize(
    ("measure", "held", "level"),
    [
        # FDA's guidance: 5 % or less is low, 20 % or more is high [S], as a label shows it
        (Measure.SODIUM, "126", Level.LOW),  # 5.48 → 5 %
        (Measure.SODIUM, "127", None),  # 5.52 → 6 %
        (Measure.SODIUM, "448", None),  # 19.48 → 19 %
        (Measure.SODIUM, "449", Level.HIGH),  # 19.52 → 20 %
        (Measure.SATURATED_FAT, "1", Level.LOW),
        (Measure.SATURATED_FAT, "1.1", None),
        (Measure.SATURATED_FAT, "4", Level.HIGH),
    ],
)
def test_low_and_high(measure: Measure, held: str, level: Level | None) -> None:
    assert share(measure, held).level is level


def much(food: str, amount: str) -> list[tuple[str, int]]:
    """What a portion of the library brings, with the percent shown."""
    found = library().foods[food]
    serving = found.serving(amount)
    assert serving
    told = what_it_brings(found, serving).much
    return [(one.measure.value, int(one.percent.value)) for one in told]


def test_foods_of_the_library() -> None:
    """From their records in SR Legacy, by hand [C]: lentils 198 g hold 15.64 g of fiber and 6.59 mg of iron."""
    assert much("lentils-boiled", "1 cup") == [("fiber", 56), ("iron", 35)]
    assert much("apple-raw", "1 medium") == [("fiber", 16)]
    assert much("milk-whole", "1 cup") == [("calcium", 20), ("protein", 15)]


def test_what_a_label_rounds_up_to_a_tenth_is_no_good_source() -> None:
    """101.54(c): contains 10 percent. Iron of 9.5 percent is shown as 10 on a label, and is not told."""
    lentils = library().foods["lentils-boiled"]  # 3.33 mg of iron in 100 g [R: FDC 172421]
    for percent, told in (("9.5", ["fiber"]), ("10.01", ["fiber", "iron"])):
        grams = Fraction(percent) * 18 / Fraction("3.33")
        serving = lentils.serving(f"{float(grams):.3f} g")
        assert serving
        brings = what_it_brings(lentils, serving)
        assert [one.measure.value for one in brings.much] == told


def test_each_portion_has_its_own() -> None:
    """One egg and three eggs are not told the same."""
    food = next(one for one in library().foods.values() if one.id == "egg-boiled")
    assert much(food.id, "1 large") != much(food.id, "3 large")


FOODS = st.sampled_from(sorted(library().foods.values(), key=lambda food: food.id))


@given(food=FOODS, times=st.integers(1, 4))
def test_every_portion_of_the_library(food: Food, times: int) -> None:
    """Two at most, the largest first, none under a tenth, none that is left out though it is larger."""
    serving = food.serving(f"{times * 50} g")
    assert serving
    brings = what_it_brings(food, serving)
    told = [one.percent.exact for one in brings.much]
    assert told == sorted(told, reverse=True)
    assert len(told) <= 2
    assert all(percent >= 10 for percent in told)
    for measure in SOUGHT:
        value, day = food.value(measure), measure.entry.daily_value
        assert day
        assert (value is None) == (measure in brings.unknown)
        held = Decimal(0) if value is None else value * serving.grams.numerator / 100
        if held * 100 / day >= 10 and measure not in {one.measure for one in brings.much}:
            assert len(told) == 2
            assert min(told) >= Fraction(held * 100 / day)
