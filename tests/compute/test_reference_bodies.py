"""Reference bodies are published ones: the DRI's adults, and the medians of the CDC 2000 charts."""

from __future__ import annotations

from decimal import Decimal

import pytest

from generator.compute.reference_bodies import REFERENCE_ADULTS, reference_weight
from generator.model.stops.day import Sex


@pytest.mark.parametrize(
    ("sex", "published"),
    # IOM DRI reference EERs, active, 19 years: man 3 067 [R], woman 2 403 [M]
    [(Sex.MALE, 3067), (Sex.FEMALE, 2403)],
)
def test_the_reference_adults_are_those_of_the_published_requirements(
    sex: Sex, published: int
) -> None:
    """IOM 2002/2005 [S]: 662 − 9.53 A + 1.25 (15.91 W + 539.6 H); 354 − 6.91 A + 1.27 (9.36 W + 726 H)."""
    adult = REFERENCE_ADULTS[sex]
    meters = adult.height_cm / 100
    older = {
        Sex.MALE: Decimal(662)
        - Decimal("9.53") * 19
        + Decimal("1.25") * (Decimal("15.91") * adult.weight_kg + Decimal("539.6") * meters),
        Sex.FEMALE: Decimal(354)
        - Decimal("6.91") * 19
        + Decimal("1.27") * (Decimal("9.36") * adult.weight_kg + 726 * meters),
    }
    assert older[sex] == pytest.approx(Decimal(published), abs=1)


@pytest.mark.parametrize(
    ("sex", "age", "kg"),
    # CDC 2000 wtage.csv, column M [R]
    [
        (Sex.MALE, 4, "16.32"),
        (Sex.FEMALE, 8, "25.76"),
        (Sex.MALE, 9, "28.68"),
        (Sex.FEMALE, 12, "41.83"),
        (Sex.MALE, 18, "67.29"),
        (Sex.FEMALE, 20, "58.22"),
    ],
)
def test_weights(sex: Sex, age: int, kg: str) -> None:
    assert reference_weight(sex, age) == Decimal(kg)


@pytest.mark.parametrize("sex", Sex)
def test_children_grow(sex: Sex) -> None:
    weights = [reference_weight(sex, age) for age in range(4, 19)]
    assert sorted(set(weights)) == weights


def test_no_weight_is_made_up() -> None:
    with pytest.raises(ValueError, match="no reference weight is kept for 19 years"):
        reference_weight(Sex.MALE, 19)
