"""The copy of SR Legacy beside the tests is what was published, and holds every food of the library."""

from __future__ import annotations

import pytest

from tests.project import library
from tests.reference import rows
from tests.sr_legacy_copy import COPY, PUBLISHED, SUMS, TABLES, copied, sums

FOODS = library().foods.values()


def test_nobody_has_changed_the_copy() -> None:
    """Against its checksums: a figure that is put right there by hand is told."""
    held = {name: (COPY / name).read_text("utf-8") for name in TABLES}
    assert (COPY / SUMS).read_text("utf-8") == sums(held)
    assert {file.name for file in COPY.iterdir()} == {*TABLES, SUMS}


def test_every_food_of_the_library_is_in_the_copy() -> None:
    held = {int(row["fdc_id"]) for row in rows("values_per_100g.csv")}
    missing = [food.id for food in FOODS if food.entry.fdc not in held]
    assert missing == [], "run `python -m tests.sr_legacy_copy` beside the published files"
    assert held == {food.entry.fdc for food in FOODS}


@pytest.mark.skipif(
    not PUBLISHED.is_dir(), reason="the official SR Legacy files are not beside this project"
)
def test_the_copy_is_what_was_published() -> None:
    made = copied(PUBLISHED, (food.entry.fdc for food in FOODS))
    assert made == {name: (COPY / name).read_text("utf-8") for name in TABLES}
