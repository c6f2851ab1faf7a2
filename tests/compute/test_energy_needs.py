"""What an adult's day takes is that of NASEM 2023, and stays near what was published before."""

from __future__ import annotations

from decimal import Decimal

import pytest

from generator.compute.energy_needs import energy_need
from generator.compute.reference_bodies import REFERENCE_ADULTS, Body
from generator.model.stops.day import ActivityLevel, Sex

ACTIVE = ActivityLevel.ACTIVE


def body(height_cm: str, weight_kg: str) -> Body:
    return Body(Decimal(height_cm), Decimal(weight_kg))


@pytest.mark.parametrize(
    ("sex", "age", "height", "weight", "printed"),
    [
        # NASEM 2023, Table 5-8, men and women of 19 and over [S]; only "active" reproduces it [C].
        (Sex.MALE, "50.3", "175.9", "83.1", 2930),
        (Sex.FEMALE, "53.9", "162.3", "71.9", 2281),
    ],
)
def test_strata_of_table_5_8(sex: Sex, age: str, height: str, weight: str, printed: int) -> None:
    need = energy_need(sex, Decimal(age), body(height, weight), ACTIVE)
    assert need.kcal == pytest.approx(Decimal(printed), abs=1)


@pytest.mark.parametrize(
    ("sex", "activity", "expected"),
    [
        # 30 years, 170 cm, 70 kg [S, C agrees]
        (Sex.MALE, ActivityLevel.INACTIVE, "2520.17"),
        (Sex.FEMALE, ActivityLevel.ACTIVE, "2475.55"),
    ],
)
def test_adults(sex: Sex, activity: ActivityLevel, expected: str) -> None:
    assert energy_need(sex, 30, body("170", "70"), activity).kcal == Decimal(expected)


COEFFICIENTS = {
    # NASEM 2023, Tables 5-8 and 5-12: constant, age, height, weight [S: four transcriptions agree]
    (Sex.MALE, ActivityLevel.INACTIVE): ("753.07", "-10.83", "6.50", "14.10"),
    (Sex.MALE, ActivityLevel.LOW_ACTIVE): ("581.47", "-10.83", "8.30", "14.94"),
    (Sex.MALE, ActivityLevel.ACTIVE): ("1004.82", "-10.83", "6.52", "15.91"),
    (Sex.MALE, ActivityLevel.VERY_ACTIVE): ("-517.88", "-10.83", "15.61", "19.11"),
    (Sex.FEMALE, ActivityLevel.INACTIVE): ("584.90", "-7.01", "5.72", "11.71"),
    (Sex.FEMALE, ActivityLevel.LOW_ACTIVE): ("575.77", "-7.01", "6.60", "12.14"),
    (Sex.FEMALE, ActivityLevel.ACTIVE): ("710.25", "-7.01", "6.54", "12.34"),
    (Sex.FEMALE, ActivityLevel.VERY_ACTIVE): ("511.83", "-7.01", "9.07", "12.56"),
}


@pytest.mark.parametrize(("sex", "activity"), COEFFICIENTS)
def test_every_row_of_the_adults_equations(sex: Sex, activity: ActivityLevel) -> None:
    """Taken apart: one year, one centimeter and one kilogram more change the need by the factors."""
    constant, by_age, by_height, by_weight = map(Decimal, COEFFICIENTS[sex, activity])

    def need(age: int, height: str, weight: str) -> Decimal:
        return energy_need(sex, age, body(height, weight), activity).kcal

    here = need(40, "170", "70")
    assert need(41, "170", "70") - here == by_age
    assert need(40, "171", "70") - here == by_height
    assert need(40, "170", "71") - here == by_weight
    assert here - 40 * by_age - 170 * by_height - 70 * by_weight == constant


def test_more_is_taken_by_a_more_active_day() -> None:
    """The levels of Table 5-4 are in order [S]."""
    for sex, reference in REFERENCE_ADULTS.items():
        needs = [energy_need(sex, 34, reference, level).kcal for level in ActivityLevel]
        assert sorted(set(needs)) == needs


@pytest.mark.parametrize(
    ("sex", "published"),
    # IOM DRI reference EERs, active, 19 years: man 3 067 [R], woman 2 403 [M]
    [(Sex.MALE, 3067), (Sex.FEMALE, 2403)],
)
def test_older_reference_values_of_adults_are_near(sex: Sex, published: int) -> None:
    """Another committee, other data: the older published needs lie within 15 % of ours."""
    ours = energy_need(sex, 19, REFERENCE_ADULTS[sex], ACTIVE).kcal
    assert ours == pytest.approx(Decimal(published), rel=Decimal("0.15"))


@pytest.mark.parametrize("age", [3, 9, Decimal("18.99")])
def test_no_need_is_worked_out_for_a_child(age: Decimal | int) -> None:
    """product.md, Care: no `day` is about anybody under 19."""
    with pytest.raises(ValueError, match="an adult of 19 or more years"):
        energy_need(Sex.MALE, age, body("135", "30"), ACTIVE)


def test_the_equation_can_be_read_and_gives_the_number() -> None:
    man = energy_need(Sex.MALE, Decimal("50.3"), body("175.9", "83.1"), ActivityLevel.VERY_ACTIVE)
    assert man.equation == "−517.88 − 10.83 × 50.3 + 15.61 × 175.9 + 19.11 × 83.1"
    woman = energy_need(Sex.FEMALE, 34, body("163", "57"), ActivityLevel.LOW_ACTIVE)
    assert woman.equation == "575.77 − 7.01 × 34 + 6.60 × 163 + 12.14 × 57"
