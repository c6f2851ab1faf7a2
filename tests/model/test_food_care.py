"""What an entry does not say of care is not taken for none."""

from __future__ import annotations

import json

import pytest

from generator.model.food import FoodEntry

ENTRY = {
    "names": {"en": "Bread"},
    "group": "grains",
    "fdc": 1,
    "record": "Bread, odd",
    "per_100g": {
        "energy": "no value",
        "protein": "no value",
        "fat": "no value",
        "carbohydrate": "no value",
        "sugars": "no value",
        "fiber": "no value",
        "saturated_fat": "no value",
        "sodium": "no value",
    },
    "portions": [{"names": {"en": "1 slice"}, "grams": 30, "record": "1 slice"}],
}


@pytest.mark.parametrize(
    ("said", "left", "contains", "chokes"),
    [
        ({}, ("allergens",), (), False),
        ({"allergens": "not looked at"}, ("allergens",), (), False),
        ({"allergens": [], "choking": "not looked at"}, ("choking",), (), False),
        ({"choking": "not looked at"}, ("allergens", "choking"), (), False),
        ({"allergens": []}, (), (), False),
        ({"allergens": ["wheat"], "choking": True}, (), ("wheat",), True),
    ],
)
def test_an_entry_says_who_looked(
    said: dict[str, object], left: tuple[str, ...], contains: tuple[str, ...], chokes: bool
) -> None:
    entry = FoodEntry.model_validate_json(json.dumps(ENTRY | said))
    assert entry.not_looked_at == left
    assert entry.contains == contains
    assert entry.can_choke is chokes
