"""Reference bodies are the medians of the CDC 2000 growth charts."""

from __future__ import annotations

from decimal import Decimal

import pytest

from generator.compute.reference_bodies import Body, reference_body, reference_weight
from generator.model.stops.day import Sex

LMS = {
    # Column M of CDC 2000 statage.csv at half a month past the birthday [R], to 8 digits.
    (Sex.BOY, 6): "115.6608862",
    (Sex.BOY, 7): "122.0305342",
    (Sex.BOY, 8): "128.1237104",
    (Sex.BOY, 9): "133.7344759",
    (Sex.BOY, 10): "138.8234114",
}


@pytest.mark.parametrize(("sex", "age"), LMS)
def test_heights_are_the_charts_medians(sex: Sex, age: int) -> None:
    assert reference_body(sex, age).height_cm == round(Decimal(LMS[sex, age]), 1)


@pytest.mark.parametrize(
    ("sex", "age", "kg"),
    # CDC 2000 wtage.csv, column M [R]
    [
        (Sex.BOY, 4, "16.32"),
        (Sex.GIRL, 8, "25.76"),
        (Sex.BOY, 9, "28.68"),
        (Sex.GIRL, 12, "41.83"),
        (Sex.BOY, 18, "67.29"),
        (Sex.GIRL, 20, "58.22"),
    ],
)
def test_weights(sex: Sex, age: int, kg: str) -> None:
    assert reference_weight(sex, age) == Decimal(kg)


def test_a_body_has_both() -> None:
    assert reference_body(Sex.GIRL, 11) == Body(Decimal("144.3"), Decimal("37.39"))


@pytest.mark.parametrize("sex", Sex)
def test_children_grow(sex: Sex) -> None:
    bodies = [reference_body(sex, age) for age in range(6, 13)]
    assert sorted(bodies, key=lambda body: (body.height_cm, body.weight_kg)) == bodies
    weights = [reference_weight(sex, age) for age in range(4, 19)]
    assert sorted(set(weights)) == weights


@pytest.mark.parametrize("age", [5, 13])
def test_no_height_is_made_up(age: int) -> None:
    with pytest.raises(ValueError, match="no reference height is kept"):
        reference_body(Sex.GIRL, age)


def test_no_weight_is_made_up() -> None:
    with pytest.raises(ValueError, match="no reference weight is kept for a boy of 19 years"):
        reference_weight(Sex.BOY, 19)
