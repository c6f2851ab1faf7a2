"""A trace can be read by people and by programs, and both say the same."""

from __future__ import annotations

import json
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

from generator.author.step_words import step_words
from generator.author.trace_text import trace_json, trace_lines
from tests.project import GOOD, worked


def test_lines(tmp_path: Path) -> None:
    figures = worked(tmp_path, GOOD).figures
    lines = list(trace_lines(figures))
    heads = [line for line in lines if not line.startswith(" ")]
    assert heads == [f"{figure.id}: {figure.value} {figure.unit}" for figure in figures]
    assert lines[0] == "breakfast.bagel-plain_oatmeal-cooked.at-home: 170 kcal"
    assert lines[1].startswith("    record: USDA FoodData Central, SR Legacy")
    assert len(lines) == len(figures) + sum(len(figure.steps) for figure in figures)


def test_json_keeps_every_number_exact(tmp_path: Path) -> None:
    figures = worked(tmp_path, GOOD.replace("amount: 1 cup", "amount: 1/3 cup")).figures
    data = json.loads(trace_json(figures))
    assert [one["id"] for one in data] == [figure.id for figure in figures]
    for one, figure in zip(data, figures, strict=True):
        assert Decimal(one["value"]) == figure.value
        assert Fraction(one["exact"]) == figure.exact
        assert [(step["what"], step["says"]) for step in one["steps"]] == list(
            map(step_words, figure.steps)
        )
        assert one["kind"] == figure.kind.value
        assert (one["stop"], one["row"], one["side"]) == (figure.stop, figure.row, figure.side)
        assert one["foods"] == [held.id for held in figure.foods]
