"""Own values that cannot be are found, with the largest that could."""

from __future__ import annotations

import pytest

from generator.check.plausible_values import plausible_values
from generator.problems import Weight
from tests.worked import worked

STOP = """
- compare:
    id: c
    measure: {measure}
    sides: [Gate, Pond]
    rows:
      - [{{{item}, source: Label, read_on: "2026-03-14"}}, {{name: Water, value: 0, source: Label}}]
"""


def found(measure: str, item: str) -> list[tuple[Weight, str]]:
    lesson = worked(STOP.format(measure=measure, item=item))
    return [(problem.weight, problem.hint) for problem in plausible_values(lesson)]


@pytest.mark.parametrize(
    ("measure", "item", "most"),
    [
        # 4-4-9 [S] and the densest record, 902 kcal in 100 g [R]; sodium 39.3 % of salt (atomic weights)
        ("energy", "name: Bar, amount: 100 g, value: 910", "902 kcal"),
        ("energy", "name: Bar, amount: 30 g, value: 840", "270 kcal"),  # kJ read as kcal
        ("sugars", "name: Bar, amount: 30 g, value: 31", "30 g"),
        ("saturated_fat", "name: Bar, amount: 10 g, value: 11", "10 g"),
        ("sodium", "name: Bar, amount: 10 g, value: 4000", "3933 mg"),
        ("energy", "food: apple-raw, amount: 1 medium, value: 2000", "1641 kcal"),  # 182 g
    ],
)
def test_what_cannot_be_must_be_put_right(measure: str, item: str, most: str) -> None:
    ((weight, hint),) = found(measure, item)
    assert weight is Weight.MUST
    assert hint.startswith(f"{most} is the most there can be")


@pytest.mark.parametrize(
    ("measure", "item"),
    [
        ("energy", "name: Lard, amount: 100 g, value: 902"),
        ("energy", "name: Oil, amount: 14 g, value: 130"),  # 101.9(c)(1) rounds 126 up
        ("sugars", "name: Sugar, amount: 4 g, value: 4"),
        ("sodium", "name: Salt, amount: 6 g, value: 2320"),
        ("energy", "name: Dinner, value: 1800"),
        ("energy", "name: Bar, amount: 1 bar, value: 230"),
    ],
)
def test_what_can_be_is_left_alone(measure: str, item: str) -> None:
    assert found(measure, item) == []


@pytest.mark.parametrize(
    ("measure", "item"),
    # More than two days' worth of one thing in one item: twice the Daily Value [S]; the bound is ours.
    [
        ("energy", "name: Dinner, value: 4001"),
        ("sodium", "name: Soup, amount: 1 bowl, value: 4700"),
        ("sugars", "name: Punch, value: 101"),
    ],
)
def test_what_is_hard_to_believe_is_questioned(measure: str, item: str) -> None:
    ((weight, hint),) = found(measure, item)
    assert weight is Weight.QUESTION
    assert "two days' worth" in hint


def test_values_of_the_library_are_not_asked_about() -> None:
    lesson = worked(
        """
        - compare:
            id: c
            measure: energy
            sides: [Gate, Pond]
            rows: [[{food: lard, amount: 1 tbsp}, {food: apple-raw, amount: 100 g}]]
        """
    )
    assert list(plausible_values(lesson)) == []


def test_a_day_is_looked_at_too() -> None:
    lesson = worked(
        """
        - day:
            person: {name: Pim, age: 34, sex: woman, activity: active}
            ate: [{food: apple-raw, amount: 1 medium}, {name: Bar, amount: 30 g, value: 840, source: L}]
            did: [Walked to the mill.]
        """
    )
    (problem,) = plausible_values(lesson)
    assert (problem.weight, problem.place.line) == (Weight.MUST, 10)
