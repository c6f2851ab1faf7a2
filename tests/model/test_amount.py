"""Amounts, times and grades are read as people write them, or not at all."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.model.amount import parse_amount, same_unit
from generator.model.grades import GradeBand, parse_grades
from generator.model.moment import clock, parse_moment


@pytest.mark.parametrize(
    ("text", "number", "unit"),
    [
        ("1 medium", "1", "medium"),
        ("2 slices", "2", "slices"),
        ("1 1/2 cups chopped", "3/2", "cups chopped"),
        ("0.5 cup", "1/2", "cup"),
        ("150 g", "150", "g"),
        ("150g", "150", "g"),
        ("2 glasses", "2", "glasses"),
        ("1 glass", "1", "glass"),
        ("8 fl oz", "8", "fl oz"),
        ("  3  oz ", "3", "oz"),
    ],
)
def test_amounts(text: str, number: str, unit: str) -> None:
    amount = parse_amount(text)
    assert amount is not None
    assert (amount.number, amount.unit) == (Fraction(number), unit)


@pytest.mark.parametrize(
    ("one", "other", "same"),
    [
        ("1 slice", "2 slices", True),
        ("1 cup chopped", "1 1/2 cups chopped", True),
        ("1 small bag", "2 small bags", True),
        ("1 glass", "2 glasses", True),
        ("1 drink box", "3 drink boxes", True),
        ("1 cookie", "3 cookies", True),
        ("1 patty", "2 patties", True),
        ("1 outer leaf", "2 outer leaves", True),
        ("1 cup", "1 cup chopped", False),
        ("1 small", "1 small bag", False),
        ("1 piece", "1 pie", False),
    ],
)
def test_one_and_several_are_one_unit(one: str, other: str, same: bool) -> None:
    first, second = parse_amount(one), parse_amount(other)
    assert first is not None
    assert second is not None
    assert same_unit(first, second) is same_unit(second, first) is same


@pytest.mark.parametrize("text", ["", "cup", "1", "12", "1/0 cup", "-1 cup", "1,5 cup", "½ cup", "1.2.3 g"])  # fmt: skip
def test_no_amounts(text: str) -> None:
    assert parse_amount(text) is None


@given(st.text(max_size=30))
def test_any_text_is_an_amount_or_nothing(text: str) -> None:
    amount = parse_amount(text)
    assert amount is None or amount.number >= 0


@pytest.mark.parametrize(
    ("text", "seconds"),
    [("0:00", "0"), ("1:10", "70"), ("01:10", "70"), ("0:59.5", "59.5"), ("1:00:00", "3600")],
)
def test_times(text: str, seconds: str) -> None:
    assert parse_moment(text) == Decimal(seconds)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "70",
        "1:60",
        "1:5",
        "-0:10",
        "1:10.",
        "1:10.1234",
        "60:00",
        "1:2:3:4",
        70,
        None,
        "１:１０",
    ],
)
def test_no_times(text: object) -> None:
    with pytest.raises(ValueError, match="is not a time"):
        parse_moment(text)


@given(st.integers(0, 359_999))
def test_a_clock_can_be_read_again(seconds: int) -> None:
    assert parse_moment(clock(Decimal(seconds))) == seconds


@pytest.mark.parametrize(
    ("text", "said", "band"),
    [
        ("3-5", "3-5", GradeBand.G3_5),
        ("K-2", "K-2", GradeBand.K_2),
        ("K", "K", GradeBand.K_2),
        (4, "4", GradeBand.G3_5),
        ("2-5", "2-5", GradeBand.K_2),
        ("6-8", "6-8", GradeBand.G6_8),
        ("5-7", "5-7", GradeBand.G3_5),
    ],
)
def test_grades_and_the_band_of_the_youngest(text: object, said: str, band: GradeBand) -> None:
    grades = parse_grades(text)
    assert (str(grades), grades.band) == (said, band)


@pytest.mark.parametrize("text", ["9", "3-9", "5-3", "3–5", "", "third", "K-K", "12", "-1", None])
def test_no_grades(text: object) -> None:
    with pytest.raises(ValueError, match=r"not a grade|lower to a higher"):
        parse_grades(text)
