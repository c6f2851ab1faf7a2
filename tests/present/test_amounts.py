"""Blocks, teaspoons and workings say the number they stand for."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.count import count_moves
from generator.compute.gap import Gap
from generator.model.measure import Measure
from generator.present.stops.row import total_view
from generator.present.views.number import Number
from generator.present.words.amounts import blocks_view, gap_working, holding_view, teaspoons
from generator.present.words.say import Say
from tests.project import GOOD, library, worked

SAY = Say(library().words["en"])
SIDES = ("At home", "Away")


@pytest.mark.parametrize(
    ("value", "said"),
    [
        ("0", "no blocks"),
        ("1", "1 one"),
        ("40", "4 tens"),
        ("231", "2 hundreds, 3 tens and 1 one"),
        ("2.5", "2 ones and one half"),
        ("0.5", "one half"),
        ("6.6", "6 ones and 6 tenths"),
        ("10.1", "1 ten and 1 tenth"),
    ],
)
def test_blocks_in_words(value: str, said: str) -> None:
    assert blocks_view(Decimal(value), SAY).label == said


@given(st.integers(0, 200_000).map(lambda tenths: Decimal(tenths) / 10))
def test_blocks_in_words_and_numbers_make_the_value(value: Decimal) -> None:
    for view in (blocks_view(value, SAY), blocks_view(value, SAY, opened=100)):
        sizes = {"hundred": 100, "ten": 10, "one": 1, "tenth": Decimal("0.1")}
        said = sum(
            int(number.replace(",", "")) * sizes[name]
            for number, name in re.findall(r"([\d,]+) (hundred|tenth|ten|one)", view.label)
        )
        assert said + Decimal("0.5") * ("one half" in view.label) == value


@pytest.mark.parametrize(
    ("grams", "said"),
    [
        ("0", "no teaspoons"),
        ("0.4", "less than ¼ teaspoon"),
        ("0.5", "about ¼ teaspoon"),  # only a value of an educator's own is finer than a gram
        ("1", "about ¼ teaspoon"),
        ("2", "about ½ teaspoon"),
        ("4", "about 1 teaspoon"),
        ("5", "about 1¼ teaspoons"),
        ("8", "about 2 teaspoons"),
        ("38", "about 9½ teaspoons"),
        ("11.9", "about 3 teaspoons"),
        ("39", "about 9¾ teaspoons"),
        ("4800", "about 1,200 teaspoons"),
    ],
)
def test_teaspoons_of_four_grams(grams: str, said: str) -> None:
    """4 g of sugar a teaspoon: public message (status S); USDA weighs 4.2 (SR28 19335, status R)."""
    assert teaspoons(Decimal(grams), Measure.SUGARS, SAY) == said


def test_hundreds_taken_apart_into_tens_are_written_with_their_thousands() -> None:
    assert blocks_view(Decimal(11_570), SAY, opened=100).label == "1,157 tens"
    assert blocks_view(Decimal(123_000), SAY).label == "1,230 hundreds"


def test_the_total_of_one_row_is_no_sum(tmp_path: Path) -> None:
    one_row = GOOD.replace(
        "        - [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]\n",
        "",
    )
    one_row = one_row.replace("moves: [march, side-step]", "moves: [march]")
    assert one_row.count("- [{food") == 1
    lines = total_view(worked(tmp_path, one_row).comparisons["breakfast"], SAY).working.lines
    assert lines == ("260 − 170 = 90",)
    lines = total_view(worked(tmp_path, GOOD).comparisons["breakfast"], SAY).working.lines
    assert lines == ("170 + 80 = 250", "260 + 110 = 370", "370 − 250 = 120")


def gap(first: int, second: int) -> Gap:
    return Gap(Decimal(first), Decimal(second), Fraction(first - second))


def test_a_working_with_its_rest() -> None:
    working = gap_working(
        gap(45, 1120), count_moves(Decimal(1075), Decimal(10)), SIDES, Measure.ENERGY, SAY
    )
    assert working.lines == (
        "1,120 − 45 = 1,075",
        "1,075 ÷ 10 = 107, and 5 left over",
    )
    assert working.says == "Away holds 1,075\N{NO-BREAK SPACE}kcal more."


def test_the_first_side_can_hold_more() -> None:
    working = gap_working(gap(90, 40), None, SIDES, Measure.SODIUM, SAY)
    assert working.lines == ("90 − 40 = 50",)
    assert working.says == "At home holds 50\N{NO-BREAK SPACE}mg more."


def test_sides_alike_name_neither() -> None:
    working = gap_working(gap(90, 90), None, SIDES, Measure.SUGARS, SAY)
    assert working.says == "Both sides hold 90\N{NO-BREAK SPACE}g."


def test_a_holding_in_words(tmp_path: Path) -> None:
    comparison = worked(tmp_path, GOOD).comparisons["breakfast"]
    oatmeal = holding_view(comparison.rows[0].sides[0], 0, "At home", Measure.ENERGY, SAY)
    assert (oatmeal.amount, oatmeal.grams) == ("1 cup", "234 g")
    assert oatmeal.value == Number("170", "170")
    assert oatmeal.teaspoons == ""
    juice = holding_view(comparison.rows[1].sides[1], 1, "Away", Measure.ENERGY, SAY)
    assert (juice.name, juice.amount, juice.grams, juice.value.text) == ("Juice", "", "", "110")
