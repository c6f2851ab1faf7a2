"""A question about a food stands at the food, in whatever kind of stop it is written."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check.food_places import food_place
from generator.check.plausible_values import plausible_values
from generator.model.figure import FigureKind
from tests.pots_lesson import LESSON
from tests.project import worked
from tests.stop_examples import example_of
from tests.worked import worked as worked_stops

IMPOSSIBLE = "{name: Bran, value: 50, amount: 10 g, source: card}"
NEW = "{food: barley-cooked, amount: 1 cup}}"


def test_an_own_value_of_a_change_is_asked_about_where_it_is_written(tmp_path: Path) -> None:
    assert NEW in LESSON
    result = worked(tmp_path, LESSON.replace(NEW, f"{IMPOSSIBLE}}}"))
    (found,) = plausible_values(result)
    line = LESSON.splitlines().index(f"        - {{change: rice-white-cooked, to: {NEW}") + 1
    assert (found.place.line, found.place.column) == (line, 63)
    assert found.what == "10 g cannot hold 50 g"


@pytest.mark.parametrize("kind", ["compare", "day", "what_if"])
def test_every_food_leads_to_its_own_entry(kind: str) -> None:
    result = worked_stops(example_of(kind))
    held = [figure for figure in result.figures if figure.kind is FigureKind.HOLDS]
    places = [food_place(result, figure, "no such key") for figure in held]
    assert len({(place.line, place.column) for place in places}) == len(held) > 2
    for figure, place in zip(held, places, strict=True):
        written = result.lesson.places.lines[place.line - 1][place.column - 1 :]
        item = figure.foods[0].item
        assert (item.food or item.name or "") in written.partition("}")[0]
