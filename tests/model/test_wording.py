"""Names of foods, portions and moves: in the page's language, or told to be foreign."""

from __future__ import annotations

from dataclasses import replace

import pytest

from generator.model.wording import FALLBACK, Wording, wording
from tests.worked import library, worked

ROW = """
    - compare:
        id: snack
        measure: energy
        sides: [One, Other]
        rows:
          - [{food: apple-raw, amount: 1 medium}, {food: apple-raw, amount: 1 medium, name: Windfall}]
"""


@pytest.mark.parametrize(
    ("names", "language", "expected"),
    [
        ({"en": "Apple", "es": "Manzana"}, "es", Wording("Manzana", foreign=False)),
        ({"en": "Apple"}, "es", Wording("Apple", foreign=True)),
        ({"en": "Apple", "es": ""}, "es", Wording("Apple", foreign=True)),
        ({"en": "Apple"}, FALLBACK, Wording("Apple", foreign=False)),
        ({"en": "Apple", "es": "Manzana"}, "es-MX", Wording("Manzana", foreign=False)),
        (
            {"en": "Corn", "es": "Maíz", "es-AR": "Choclo"},
            "es-AR",
            Wording("Choclo", foreign=False),
        ),
    ],
)
def test_a_language_without_a_name_is_told(
    names: dict[str, str], language: str, expected: Wording[str]
) -> None:
    assert wording(names, language) == expected


def test_every_kind_of_thing_is_named_the_same_way() -> None:
    food, move = library().foods["apple-raw"], library().moves["march"]
    assert food.name("es") == Wording(food.entry.names["es"], foreign=False)
    assert food.name("fr") == Wording(food.entry.names["en"], foreign=True)
    assert food.entry.portions[0].name("fr").foreign
    assert move.text("fr") == Wording(move.texts["en"], foreign=True)


def test_the_lesson_s_own_wording_is_never_foreign() -> None:
    first, second = worked(ROW).comparisons["snack"].rows[0].sides
    assert first.name("fr") == Wording("Apple", foreign=True)
    assert second.name("fr") == Wording("Windfall", foreign=False)
    own = replace(second, food=None)
    assert own.name("es").words == "Windfall"
