"""Resting energy is Schofield's, and what is built on it is the Youth Compendium's."""

from __future__ import annotations

from decimal import Decimal

import pytest

from generator.compute.move_minutes import net_kcal_a_minute
from generator.compute.resting import resting_energy
from generator.model.stops.day import Sex


@pytest.mark.parametrize(
    ("sex", "age", "weight", "expected"),
    [
        # Vectors computed by hand from the coefficients of Schofield 1985 [coefficients S, vectors C]
        (Sex.MALE, 8, "25.75", "1088.98"),
        (Sex.FEMALE, 8, "25.76", "1009.21"),
        (Sex.MALE, 10, "32.1", "1225.92"),
        (Sex.FEMALE, 11, "37.4", "1193.16"),
    ],
)
def test_children(sex: Sex, age: int, weight: str, expected: str) -> None:
    assert round(resting_energy(sex, age, Decimal(weight)), 2) == Decimal(expected)


def test_published_example_of_a_woman() -> None:
    """FAO/WHO/UNU 2004, Human energy requirements, 5.4.1 [R]: 55 kg, 20 to 30 years: 1 302 kcal; at PAL 1.85 2 410."""
    resting = resting_energy(Sex.FEMALE, 25, Decimal(55))
    assert round(resting) == 1302
    # The publication multiplies 5.45 MJ and rounds to 10.08 MJ = 2 410 kcal: three figures.
    assert resting * Decimal("1.85") == pytest.approx(Decimal(2410), abs=5)


@pytest.mark.parametrize(
    ("mety", "net"),
    [
        # Public vector [S, C agrees]: boy, 12 years, 40 kg; gross 6.733364, 7.017872, 2.845083 kcal a minute
        ("7.1", "5.785003"),
        ("7.4", "6.069511"),
        ("3.0", "1.896722"),
    ],
)
def test_energy_above_rest(mety: str, net: str) -> None:
    resting = resting_energy(Sex.MALE, 12, Decimal(40))
    assert resting / 1440 == pytest.approx(Decimal("0.948361"), abs=Decimal("0.000001"))
    assert float(net_kcal_a_minute(Decimal(mety), resting)) == pytest.approx(float(net), abs=1e-6)


@pytest.mark.parametrize(
    ("birthday", "sex", "weight", "expected"),
    [
        # Schofield 1985 [coefficients S]; that a band begins on the birthday is our choice.
        (10, Sex.FEMALE, "33", "1134.272"),  # 13.384 × 33 + 692.6
        (18, Sex.MALE, "67", "1701.019"),  # 15.057 × 67 + 692.2
        (30, Sex.FEMALE, "70", "1414.42"),  # 8.126 × 70 + 845.6
        (60, Sex.MALE, "80", "1524.58"),  # 11.711 × 80 + 587.7
    ],
)
def test_a_band_begins_on_the_birthday(birthday: int, sex: Sex, weight: str, expected: str) -> None:
    assert resting_energy(sex, birthday, Decimal(weight)) == Decimal(expected)
    day_before = resting_energy(sex, Decimal(birthday) - Decimal("0.01"), Decimal(weight))
    assert day_before != Decimal(expected)


@pytest.mark.parametrize(
    ("age", "weight", "says"), [(2, "13", "from 3 years"), (9, "0", "cannot weigh")]
)
def test_refusals(age: int, weight: str, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        resting_energy(Sex.MALE, age, Decimal(weight))


def test_a_cost_no_higher_than_rest_has_no_minutes() -> None:
    with pytest.raises(ValueError, match="no more than rest"):
        net_kcal_a_minute(Decimal(1), Decimal(1000))
