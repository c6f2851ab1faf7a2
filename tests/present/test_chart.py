"""The bars of a chart stand for the shown values, in the page and in the figure to explore."""

from __future__ import annotations

import json
from pathlib import Path

import plotly.graph_objects as go
import pytest

from generator.model.words import Words
from generator.present.pictures.chart import _separators, chart_view, figure_json
from generator.present.words.say import Say
from tests.project import GOOD, library, worked

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


def test_bars_of_nothing_have_no_width(tmp_path: Path) -> None:
    lines = [
        f"        - [{{name: A{at}, value: 0, source: x}}, {{name: B, value: 0, source: x}}]"
        if line.startswith("        - [")
        else line
        for at, line in enumerate(GOOD.splitlines())
    ]
    result = worked(tmp_path, "\n".join(lines))
    comparison = result.comparisons["breakfast"]
    view = chart_view(comparison, SAY, "../")
    assert {bar.width for bar in view.bars} == {"0"}
    assert json.loads(figure_json(comparison, SAY))["layout"]["xaxis"]["range"][1] > 0


def test_the_figure_holds_the_shown_values_of_both_sides(tmp_path: Path) -> None:
    figure = json.loads(figure_json(worked(tmp_path, GOOD).comparisons["breakfast"], SAY))
    assert [bar["name"] for bar in figure["data"]] == ["At home", "On the way"]
    assert [[float(x) for x in bar["x"]] for bar in figure["data"]] == [[170, 80], [260, 110]]
    shapes = {bar["marker"]["pattern"]["shape"] for bar in figure["data"]}
    assert len(shapes) == 2, "told apart by colour alone"


def test_every_food_of_the_figure_has_a_line_of_its_own(tmp_path: Path) -> None:
    figure = json.loads(figure_json(worked(tmp_path, GOOD).comparisons["breakfast"], SAY))
    named = [name["text"] for name in figure["layout"]["annotations"]]
    first, second = (bar["hovertext"] for bar in figure["data"])
    assert named == [food for row in zip(first, second, strict=True) for food in row]


def test_the_plotting_library_knows_every_property(tmp_path: Path) -> None:
    figure = json.loads(figure_json(worked(tmp_path, GOOD).comparisons["breakfast"], SAY))
    go.Figure(figure)  # raises ValueError for a property or a value it does not know


@pytest.mark.parametrize(
    ("language", "signs"),
    [("en", ".,"), ("es-MX", ".,"), ("es-ES", ",."), ("fr", ",\N{NARROW NO-BREAK SPACE}")],
)
def test_the_figure_writes_numbers_as_its_language_does(language: str, signs: str) -> None:
    """Number forms of Unicode CLDR; the French ones from memory."""
    assert _separators(Say(Words(language, {}))) == signs
