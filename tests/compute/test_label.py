"""Values are rounded as 21 CFR 101.9(c) has it, and one place decides a tie."""

from __future__ import annotations

import json
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import TypedDict

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.label import label_value
from generator.model.measure import Measure

CASES = json.loads(
    (Path(__file__).parents[1] / "examples" / "label.json").read_text(encoding="utf-8")
)["cases"]


class LabelCase(TypedDict):
    """A value of label.json."""

    title: str
    measure: str
    exact: str
    shown: str
    rule: str
    status: str


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["title"])
def test_edges(case: LabelCase) -> None:
    shown = label_value(Measure(case["measure"]), Fraction(case["exact"]))
    assert shown.value == Decimal(case["shown"])
    assert shown.rounding
    assert shown.rounding.rule.paragraph.startswith(case["rule"])
    assert shown.exact == Fraction(case["exact"])


def test_every_measure_has_its_edges() -> None:
    assert {case["measure"] for case in CASES} == set(Measure)


STEPS = {
    Measure.ENERGY: lambda value: 5 if value <= 50 else 10,
    Measure.SODIUM: lambda value: 5 if value <= 140 else 10,
    Measure.SATURATED_FAT: lambda value: Fraction(1, 2) if value < 5 else 1,
    Measure.SUGARS: lambda _: 1,
    Measure.FIBER: lambda _: 1,
    Measure.PROTEIN: lambda _: 1,
    Measure.CALCIUM: lambda _: 10,
    Measure.IRON: lambda _: Fraction(1, 10),
    Measure.POTASSIUM: lambda _: 10,
    Measure.VITAMIN_C: lambda _: 1,
}
"""The step of 21 CFR 101.9(c)(1), (2), (4), (6) and (7) at a value (status S), and those of FDA's
guidance of December 2019 for vitamins and minerals (status S), written again apart."""

ZERO_BELOW = {
    Measure.ENERGY: 5,
    Measure.SODIUM: 5,
    Measure.SATURATED_FAT: Fraction(1, 2),
    Measure.SUGARS: Fraction(1, 2),
    Measure.FIBER: Fraction(1, 2),
    Measure.PROTEIN: Fraction(1, 2),
}
"""What is less is shown as 0: 21 CFR 101.9(c)(1), (2), (4), (6) and (7) (status S)."""


@given(st.sampled_from(Measure), st.fractions(0, 30_000))
def test_a_shown_value_is_a_multiple_of_its_step_and_never_more_than_half_of_it_away(
    measure: Measure, exact: Fraction
) -> None:
    shown = Fraction(label_value(measure, exact).value)
    step = Fraction(STEPS[measure](exact))
    assert shown % step == 0
    if exact < ZERO_BELOW.get(measure, 0):
        assert shown == 0
    else:
        assert -step / 2 <= exact - shown < step / 2


@given(st.sampled_from(Measure), st.fractions(0, 30_000), st.fractions(0, 30_000))
def test_more_never_shows_less(measure: Measure, one: Fraction, other: Fraction) -> None:
    less, more = sorted((one, other))
    assert label_value(measure, less).value <= label_value(measure, more).value


@given(st.sampled_from(Measure), st.fractions(max_value=-1))
def test_a_negative_value_is_refused(measure: Measure, exact: Fraction) -> None:
    with pytest.raises(ValueError, match="cannot hold"):
        label_value(measure, exact)


@given(st.sampled_from(Measure), st.integers(0, 20_000))
def test_a_label_value_stays_itself(measure: Measure, exact: int) -> None:
    shown = label_value(measure, Fraction(exact)).value
    assert label_value(measure, Fraction(shown)).value == shown
