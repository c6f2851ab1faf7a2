"""What is proposed for a record, against what people chose for the foods of the library."""

from __future__ import annotations

import pytest

from generator.author.food_entry import scalar
from generator.author.food_proposal import free_id, proposed_group
from tests.project import library
from tests.reference import rows

FOODS = library().foods


def test_most_groups_are_proposed_as_people_chose_them() -> None:
    """Common practice, no source: a proposal is looked over anyway, so nine in ten will do."""
    titles = {row["id"]: row["description"] for row in rows("food_category.csv")}
    shelf = {int(row["fdc_id"]): titles[row["food_category_id"]] for row in rows("food.csv")}
    wrong = [
        f"{food.id}: {proposed}, not {food.entry.group}"
        for food in FOODS.values()
        if food.entry.fdc in shelf
        and (proposed := proposed_group(food.entry.record, shelf[food.entry.fdc]))
        != food.entry.group
    ]
    assert len(wrong) < len(FOODS) / 10, "\n".join(wrong)


@pytest.mark.parametrize(
    ("text", "written"),
    [
        ("1 cup", "1 cup"),
        ("no", '"no"'),
        ("12", '"12"'),
        ("1e3", '"1e3"'),
        ("a: b", '"a: b"'),
        ("cup, sliced", '"cup, sliced"'),
        ('8" pie', '"8\\" pie"'),
        ("piña", '"piña"'),
        ("", '""'),
    ],
)
def test_a_text_reads_back_as_it_was(text: str, written: str) -> None:
    assert scalar(text) == written


@pytest.mark.parametrize(
    ("taken", "id_"),
    [
        ((), "soup-lentil"),
        (("soup-lentil",), "soup-lentil-canned"),
        (("soup-lentil", "soup-lentil-canned"), "soup-lentil-canned-2"),
        (("soup-lentil", "soup-lentil-canned", "soup-lentil-canned-2"), "soup-lentil-canned-3"),
    ],
)
def test_an_id_is_the_first_words_that_no_food_has(taken: tuple[str, ...], id_: str) -> None:
    assert free_id("Soup, lentil, canned", taken) == id_
