"""Figures that no food can have are found, those of the published records are not."""

from __future__ import annotations

import csv
from collections import Counter
from decimal import Decimal

import pytest

from generator.compute.food_figures import Doubt, DoubtKind, doubts, label_rounding
from generator.model.food_record import FIGURES
from tests.project import library
from tests.reference import COLUMNS
from tests.sr_legacy_copy import PUBLISHED

APPLE = {
    "energy": "52",
    "protein": "0.26",
    "fat": "0.17",
    "carbohydrate": "13.81",
    "sugars": "10.39",
    "fiber": "2.4",
    "saturated_fat": "0.028",
    "sodium": "1",
    "calcium": "6",
    "iron": "0.12",
    "potassium": "107",
    "vitamin_c": "4.6",
}
"""Raw apple with skin, USDA SR Legacy 171688 [R]."""


def of(**changed: str) -> list[Doubt]:
    """What is doubtful about an apple with other figures; an empty one is a blank in the record."""
    held = {**APPLE, **changed}
    return list(doubts({name: Decimal(text) if text else None for name, text in held.items()}))


def test_an_apple_can_be() -> None:
    assert of() == []


@pytest.mark.parametrize(
    ("changed", "kind", "figure", "limit"),
    [
        # 902 kcal: lard, the densest record of SR Legacy [R]; 393.39 mg of sodium in 1 g of salt [M]
        ({"energy": "3070"}, DoubtKind.TOO_MUCH, "energy", "902"),
        ({"sugars": "103"}, DoubtKind.TOO_MUCH, "sugars", "100"),
        ({"carbohydrate": "138.1"}, DoubtKind.TOO_MUCH, "carbohydrate", "100"),
        ({"iron": "100001"}, DoubtKind.TOO_MUCH, "iron", "100000"),
        ({"fiber": "24"}, DoubtKind.PARTS, "fiber", "13.81"),
        ({"sugars": "103.9", "carbohydrate": ""}, DoubtKind.TOO_MUCH, "sugars", "100"),
        ({"sugars": "14.9"}, DoubtKind.PARTS, "sugars", "13.81"),
        ({"saturated_fat": "2.8"}, DoubtKind.PARTS, "saturated_fat", "0.17"),
        ({"protein": "90", "energy": "410"}, DoubtKind.TOGETHER, "protein", "100"),
        ({"fat": "50", "energy": "100"}, DoubtKind.BELOW_FAT, "energy", "450"),
        # 4-4-9 gives 57.81; 7 kcal/g of alcohol in the 85.76 g that are left gives 600 more (NBK83822 [R])
        ({"energy": "700"}, DoubtKind.BEYOND_ALL, "energy", "57.81"),
    ],
)
def test_what_cannot_be(changed: dict[str, str], kind: DoubtKind, figure: str, limit: str) -> None:
    (one,) = of(**changed)
    assert (one.kind, one.figure, one.limit) == (kind, figure, Decimal(limit))
    assert not one.can_be


@pytest.mark.parametrize(
    ("changed", "kind"),
    [
        ({"energy": "520"}, DoubtKind.HIGH),  # a digit too many, or a strong drink
        ({"energy": "75"}, DoubtKind.HIGH),
        ({"energy": "35"}, DoubtKind.LOW),
        ({"carbohydrate": "31.81"}, DoubtKind.LOW),
    ],
)
def test_what_may_be(changed: dict[str, str], kind: DoubtKind) -> None:
    (one,) = of(**changed)
    assert one.kind is kind
    assert one.can_be


@pytest.mark.parametrize(
    "changed",
    [
        {"sugars": "14.5"},  # measured apart from carbohydrate, which is what the rest leaves
        {"energy": "69"},  # 4-4-9 and 20 %, 21 CFR 101.9(g) [S]
        {"energy": "", "fat": ""},
        {"carbohydrate": "", "sugars": "60", "fiber": "40"},  # a blank is no zero
        {"carbohydrate": "-0.15", "sugars": "0", "fiber": "0", "energy": "3"},  # by difference
        {"fiber": "13", "energy": "32"},  # fiber gives 1.5 to 2.5 kcal/g (NBK83822 [R])
    ],
)
def test_what_is_left_alone(changed: dict[str, str]) -> None:
    assert of(**changed) == []


@pytest.mark.parametrize(
    ("serving", "label"),
    [
        # What a label may say of a serving by 21 CFR 101.9(c)(1), (c)(2), (c)(6) [S]
        ("14", {"energy": "130", "fat": "14", "saturated_fat": "2", "protein": "0", "carbohydrate": "0"}),
        ("5", {"energy": "20", "carbohydrate": "4", "sugars": "5", "protein": "0", "fat": "0"}),
        ("30", {"energy": "150", "fat": "10", "carbohydrate": "16", "protein": "2", "fiber": "1"}),
    ],
)  # fmt: skip
def test_a_label_rounds_a_serving(serving: str, label: dict[str, str]) -> None:
    held = {name: Decimal(text) * 100 / Decimal(serving) for name, text in label.items()}
    assert [*doubts(held, label_rounding(Decimal(serving)))] == []
    kilojoules = held | {"energy": held["energy"] * Decimal("4.184")}
    assert [*doubts(kilojoules, label_rounding(Decimal(serving)))] != []


def test_one_wrong_figure_is_told_once() -> None:
    assert len(of(fat="1000")) == 1


def test_no_food_of_the_library_is_doubtful() -> None:
    found = {
        food.id: told
        for food in library().foods.values()
        if (told := [*doubts({name: food.entry.per_100g.value(name) for name in FIGURES})])
    }
    assert found == {}


@pytest.mark.skipif(
    not PUBLISHED.is_dir(), reason="the official SR Legacy files are not beside this project"
)
def test_no_published_record_cannot_be_and_few_are_questioned() -> None:
    """All 7,793 of SR Legacy [R]: two in three that are questioned hold alcohol."""
    found = Counter[bool]()
    with (PUBLISHED / "values_per_100g.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            held = {
                name: Decimal(row[column]) if row[column] else None
                for name, column in COLUMNS.items()
            }
            found.update(doubt.can_be for doubt in doubts(held))
    assert found == {True: 94}
