"""Sums over a lesson's numbers come out as a calculator has them, and what is no sum is told with a way out.

The expected values are worked out by hand: GOOD has 170 and 260 kcal in its first row, 80 and 110
in its second, 250 and 370 in all, gaps of 90, 30 and 120.
"""

from __future__ import annotations

from fractions import Fraction
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.arithmetic import Reckoned, SumError, reckon
from generator.compute.figure import Figure
from tests.project import GOOD, worked


@cache
def figures() -> dict[str, Figure]:
    with TemporaryDirectory() as folder:
        return {one.id: one for one in worked(Path(folder), GOOD).figures}


def result(written: str) -> Reckoned:
    return reckon(written, figures())


@pytest.mark.parametrize(
    ("written", "value", "unit"),
    [
        ("breakfast.total.gap", 120, "kcal"),
        ("half breakfast.total.gap", 60, "kcal"),
        ("half (breakfast.total.at-home + breakfast.total.on-the-way)", 310, "kcal"),
        ("breakfast.total.on-the-way - breakfast.total.at-home * 1", 120, "kcal"),
        ("breakfast.total.gap × 4 ÷ 3", 160, "kcal"),
        ("breakfast.total.gap / breakfast.bagel-plain_oatmeal-cooked.gap * 3", 4, None),
        ("breakfast.oatmeal-cooked+bagel-plain.gap", 90, "kcal"),
        ("breakfast.total.gap − half breakfast.total.gap", 60, "kcal"),
        ("breakfast.total.count * 2", 24, "times"),
        ("half half breakfast.total.gap", 30, "kcal"),
    ],
)
def test_a_sum(written: str, value: int, unit: str | None) -> None:
    found = result(written)
    assert found.value == value
    assert (str(found.unit) if found.unit else None) == unit


@pytest.mark.parametrize(
    ("written", "shown"),
    [
        ("half breakfast.total.gap", "120 ÷ 2"),
        ("half (breakfast.total.at-home + breakfast.total.on-the-way)", "( 250 + 370 ) ÷ 2"),
        ("breakfast.total.gap - half breakfast.total.gap", "120 − ( 120 ÷ 2 )"),
        ("breakfast.total.gap × 4 + breakfast.total.gap", "120 × 4 + 120"),
    ],
)
def test_a_sum_is_read_with_its_numbers(written: str, shown: str) -> None:
    assert " ".join(map(str, result(written).parts)) == shown


NAMES = st.sampled_from(["breakfast.total.gap", "breakfast.total.at-home"])
PRODUCTS = st.tuples(NAMES, st.sampled_from("*/"), st.integers(1, 9)).map(
    lambda one: " ".join(map(str, one))
)


@given(st.lists(PRODUCTS, min_size=1, max_size=5), st.lists(st.sampled_from("+-"), min_size=5))
def test_multiplying_comes_before_adding(products: list[str], signs: list[str]) -> None:
    """Held against Python's own arithmetic with fractions in the places of the names."""
    written = products[0] + "".join(
        f" {sign} {one}" for sign, one in zip(signs, products[1:], strict=False)
    )
    python = written.replace("breakfast.total.gap", "F(120)").replace(
        "breakfast.total.at-home", "F(250)"
    )
    found = result(written)
    assert found.value == eval(python, {"F": Fraction})  # noqa: S307  # made of the words above alone
    shown = " ".join(f"F({one})" if isinstance(one, Fraction) else one for one in found.parts)
    signs_of_python = str.maketrans({"−": "-", "×": "*", "÷": "/"})
    assert eval(shown.translate(signs_of_python), {"F": Fraction}) == found.value  # noqa: S307


@pytest.mark.parametrize(
    ("written", "what"),
    [
        ("breakfast.totl.gap", "`breakfast.totl.gap` is no number of the lesson"),
        ("120", "names no number of the lesson"),
        ("breakfast.total.gap + 20", "a number that is written out is no part of +"),
        ("breakfast.total.gap + breakfast.total.count", "kcal and times cannot be added"),
        ("breakfast.total.gap × breakfast.total.gap", "kcal times kcal is nothing to count"),
        ("breakfast.total.gap ÷ 0", "divides by zero"),
        ("breakfast.total.gap ÷", "the sum breaks off"),
        ("(breakfast.total.gap", "the sum breaks off"),
        ("breakfast.total.gap 3", "`3` stands where a sign or the end is wanted"),
        ("half", "the sum breaks off"),
        ("12 ÷ breakfast.total.gap", "a plain number cannot be divided by kcal"),
        ("Kiosk holds more", "`Kiosk` is no number of the lesson"),
        ("breakfast.total.gap ÷ § ", "`§` is no number of the lesson"),
    ],
)
def test_what_is_no_sum_is_told(written: str, what: str) -> None:
    with pytest.raises(SumError) as wrong:
        result(written)
    assert what in wrong.value.what
    assert wrong.value.hint
