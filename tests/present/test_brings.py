"""What a portion brings is told in plain words: to the family the thing, to adults the shares."""

from __future__ import annotations

from decimal import Decimal

import pytest

from generator.compute.holding import Holding, hold
from generator.model.measure import Measure
from generator.model.stops.compare import Item
from generator.present.words.brings import brings_rule, brings_views
from generator.present.words.say import Say
from tests.project import library

SAYS = {tag: Say(library().words[tag]) for tag in ("en", "es")}


def held(food: str, amount: str) -> Holding:
    return hold(Item(food=food, amount=amount), Measure.ENERGY, library(), food)


@pytest.mark.parametrize(
    ("language", "much", "for_adults"),
    [
        # FDC 172421, 198 g [R], shares by hand [C]
        (
            "en",
            "fiber and iron",
            "Brings fiber (56%) and iron (35%). Low: sodium (0%) and saturated fat (1%).",
        ),
        (
            "es",
            "fibra y hierro",
            "Aporta fibra (56%) y hierro (35%). Bajo: sodio (0%) y grasa saturada (1%).",
        ),
    ],
)
def test_lentils(language: str, much: str, for_adults: str) -> None:
    (view,) = brings_views([held("lentils-boiled", "1 cup")], SAYS[language])
    assert view.much == much
    assert " ".join(view.for_adults) == for_adults


def test_a_food_that_brings_little_has_its_line_too() -> None:
    sugar, pie = brings_views(
        [held("sugar-white", "1 tsp"), held("apple-pie-homemade", "1 slice")], SAYS["en"]
    )
    assert sugar.much == "less than a tenth of each"
    assert pie.much == "less than a tenth of each that its record tells"
    assert pie.for_adults[-1] == "Its record has no value for fiber."


def test_each_portion_has_a_line_and_equal_ones_one() -> None:
    """figures.md D6: portions of one food were told by the first of them."""
    small, large = held("egg-boiled", "1 large"), held("egg-boiled", "3 large")
    views = brings_views([small, large, small], SAYS["en"])
    assert [view.portion for view in views] == [
        "Hard-boiled egg, 1 large",
        "Hard-boiled egg, 3 large",
    ]
    assert views[0].for_adults != views[1].for_adults


def test_nothing_is_said_of_a_value_of_its_own() -> None:
    own = Item.model_validate({"name": "Juice", "value": Decimal(110), "source": "carton"})
    assert brings_views([hold(own, Measure.ENERGY, library(), "juice")], SAYS["en"]) == ()


def test_what_is_looked_at_is_said_where_a_portion_holds_little_of_all() -> None:
    lentils, sugar = held("lentils-boiled", "1 cup"), held("sugar-white", "1 tsp")
    looked_at = "Looked at: fiber, protein, calcium, iron, potassium and vitamin C."
    for holdings, said in (([lentils], False), ([lentils, sugar], True)):
        rule = brings_rule(brings_views(holdings, SAYS["en"]), SAYS["en"])
        assert rule.endswith(looked_at) is said
