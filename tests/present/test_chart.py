"""The bars of a chart stand for the shown values, in the page and in each way to explore them."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import plotly.graph_objects as go
import pytest

from generator.compute.result import Comparison
from generator.model.words import Words
from generator.present.pictures.chart import chart_view
from generator.present.pictures.chart_file import chart_json
from generator.present.pictures.chart_layout import separators
from generator.present.pictures.colours import LIGHT
from generator.present.words.amounts import food_name
from generator.present.words.say import Say
from tests.project import GOOD, library, worked

ROOT = Path(__file__).parents[2]
SAY = Say(library().words["en"])


def test_bars_are_to_one_scale(tmp_path: Path) -> None:
    result = worked(tmp_path, GOOD)
    view = chart_view(result.comparisons["breakfast"], SAY, "../")
    assert [bar.value for bar in view.bars] == [
        f"{value}\N{NO-BREAK SPACE}kcal" for value in (170, 260, 80, 110)
    ]
    assert [bar.width for bar in view.bars] == ["65", "100", "31", "42"]
    assert "energy" in view.label
    assert "At home" in view.label


def chart_of(comparison: Comparison) -> list[dict[str, Any]]:
    found = json.loads(chart_json(comparison, SAY))["ways"]
    assert isinstance(found, list)
    return found


@pytest.fixture
def breakfast(tmp_path: Path) -> Comparison:
    """Rows of 170 and 260, and of 80 and 110."""
    return worked(tmp_path, GOOD).comparisons["breakfast"]


def test_bars_of_nothing_have_no_width(tmp_path: Path) -> None:
    lines = [
        f"        - [{{name: A{at}, value: 0, source: x}}, {{name: B, value: 0, source: x}}]"
        if line.startswith("        - [")
        else line
        for at, line in enumerate(GOOD.splitlines())
    ]
    comparison = worked(tmp_path, "\n".join(lines)).comparisons["breakfast"]
    view = chart_view(comparison, SAY, "../")
    assert {bar.width for bar in view.bars} == {"0"}
    ways = chart_of(comparison)
    assert ways[0]["layout"]["xaxis"]["range"][1] > 0
    assert SAY("chart_shares") not in {way["name"] for way in ways}, "parts of nothing"
    for way in ways:
        go.Figure(data=way["data"], layout=way["layout"])


def test_foods_side_by_side_hold_the_shown_values(breakfast: Comparison) -> None:
    figure = chart_of(breakfast)[0]
    assert [bar["name"] for bar in figure["data"]] == ["At home", "On the way"]
    assert [[float(x) for x in bar["x"]] for bar in figure["data"]] == [[170, 80], [260, 110]]
    shapes = {bar["marker"]["pattern"]["shape"] for bar in figure["data"]}
    assert len(shapes) == 2, "told apart by colour alone"


def test_every_food_has_a_line_of_its_own(breakfast: Comparison) -> None:
    named = [name["text"] for name in chart_of(breakfast)[0]["layout"]["annotations"]]
    assert named == [food_name(held, SAY) for held in breakfast.holdings]


def test_the_columns_are_as_high_as_the_totals(breakfast: Comparison) -> None:
    stacked = chart_of(breakfast)[1]
    heights = [sum(float(piece["y"][side]) for piece in stacked["data"]) for side in (0, 1)]
    assert heights == [250, 370]
    assert stacked["layout"]["yaxis"]["range"][1] >= 370
    assert "250\N{NO-BREAK SPACE}kcal" in stacked["says"]
    assert "370\N{NO-BREAK SPACE}kcal" in stacked["says"]


def test_the_parts_of_a_total_make_a_hundred(breakfast: Comparison) -> None:
    """170 of 250 is 68 in a hundred, 260 of 370 is 70.27."""
    shares = chart_of(breakfast)[2]
    for side in (0, 1):
        assert sum(piece["y"][side] for piece in shares["data"]) == pytest.approx(100)
    assert shares["data"][0]["y"] == pytest.approx([68, 70.27], abs=0.005)
    assert "68%" in shares["says"]
    assert "70%" in shares["says"]


def test_gaps_lie_from_long_to_short_each_in_the_colour_of_its_side(breakfast: Comparison) -> None:
    gaps = chart_of(breakfast)[3]
    (bars,) = gaps["data"]
    assert [float(x) for x in bars["x"]] == [90, 30]
    assert bars["y"] == [0, 1]
    assert bars["name"] == "On the way"
    assert bars["marker"]["color"] == LIGHT.sides[1]
    first = breakfast.rows[0]
    assert gaps["layout"]["annotations"][0]["text"] == food_name(first.sides[0], SAY)


def test_a_single_row_is_seen_in_one_way(tmp_path: Path) -> None:
    rows = [line for line in GOOD.splitlines() if line.startswith("        - [")]
    alone = "\n".join(line for line in GOOD.splitlines() if line not in rows[1:])
    alone = alone.replace("gap, count, total", "gap, count").replace("march, side-step", "march")
    ways = chart_of(worked(tmp_path, alone).comparisons["breakfast"])
    assert [way["name"] for way in ways] == [SAY("chart_sides")]


def test_the_plotting_library_knows_every_property(breakfast: Comparison) -> None:
    for way in chart_of(breakfast):
        # Raises ValueError for a property or a value it does not know.
        go.Figure(data=way["data"], layout=way["layout"])


def test_every_colour_is_one_that_the_page_has(breakfast: Comparison) -> None:
    told = json.loads(chart_json(breakfast, SAY))
    tokens = (ROOT / "theme/css/tokens.css").read_text("utf-8")
    colours = set(re.findall(r'"(#[0-9a-f]+)"', json.dumps(told["ways"])))
    assert colours
    for colour in colours:
        assert f"{told['colours'][colour]}: {colour};" in tokens


@pytest.mark.parametrize(
    ("language", "signs"),
    [("en", ".,"), ("es-MX", ".,"), ("es-ES", ",."), ("fr", ",\N{NARROW NO-BREAK SPACE}")],
)
def test_the_figure_writes_numbers_as_its_language_does(language: str, signs: str) -> None:
    """Number forms of Unicode CLDR; the French ones from memory."""
    assert separators(Say(Words(language, {}))) == signs
