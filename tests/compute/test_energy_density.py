"""Energy density bands of the 42 check foods, and what happens where bands touch."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest

from generator.compute.energy_density import DensityBand, density, density_band
from tests.check_foods import CHECK_FOODS, CheckFood


@pytest.mark.parametrize("food", CHECK_FOODS, ids=lambda food: food.name)
def test_band_of_a_published_value(food: CheckFood) -> None:
    """Kcal of USDA SR28, the same in SR Legacy [R]; bands after Rolls 2009 [S, high M]."""
    held = density(Fraction(food.kcal), Fraction(100))
    assert density_band(held) == food.band
    assert abs(held - Fraction(Decimal(food.density))) <= Fraction(5, 1000)


@pytest.mark.parametrize(
    ("kcal_per_gram", "band"),
    # Cuts of Rolls 2009 [S]; which side a cut itself belongs to is ours.
    [
        ("0.59", "very low"),
        ("0.6", "low"),
        ("1.5", "low"),
        ("1.51", "medium"),
        ("4.0", "medium"),
        ("4.01", "high"),
        ("9", "high"),
    ],
)
def test_where_bands_touch(kcal_per_gram: str, band: str) -> None:
    assert density_band(Fraction(kcal_per_gram)) == band


def test_there_are_42() -> None:
    assert len(CHECK_FOODS) == 42
    assert {food.band for food in CHECK_FOODS} == set(DensityBand)


@pytest.mark.parametrize(("kcal", "grams"), [(100, 0), (100, -5), (-1, 100)])
def test_no_density(kcal: int, grams: int) -> None:
    with pytest.raises(ValueError, match="no energy density"):
        density(Fraction(kcal), Fraction(grams))
