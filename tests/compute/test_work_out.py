"""Every number of a lesson comes from its records, and its trace can be worked out again by hand."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest

from generator.author.step_words import step_words
from generator.compute.figure import Figure
from generator.compute.result import LessonResult
from generator.model.figure import FigureKind, Tally
from tests.project import GOOD, worked


@pytest.fixture
def result(tmp_path: Path) -> LessonResult:
    return worked(tmp_path, GOOD)


def number(text: str) -> Fraction:
    return Fraction(text)


def test_shown_values_gaps_and_counts(result: LessonResult) -> None:
    """Oatmeal 71 kcal and 234 g a cup: references of USDA SR Legacy 173905 (status R), 170 shown (C)."""
    figures = {figure.id: figure.value for figure in result.figures}
    first, second = "breakfast.bagel-plain_oatmeal-cooked", "breakfast.apple-raw_juice"
    assert figures[f"{first}.at-home"] == 170
    assert figures[f"{first}.on-the-way"] == 260  # bagel 174899: 264 kcal, 99 g, so 261.36
    assert figures[f"{first}.gap"] == 90
    assert figures[f"{second}.at-home"] == 80  # apple 171688: 52 kcal, so 78 in 150 g
    assert figures[f"{second}.on-the-way"] == 110  # as printed on the carton
    assert figures["breakfast.total.at-home"] == 250
    assert figures["breakfast.total.on-the-way"] == 370
    assert figures["breakfast.total.gap"] == 120
    assert figures[f"{first}.count"] == 9
    assert figures[f"{second}.count"] == 3
    assert figures["breakfast.total.count"] == 12
    assert figures["breakfast.total.left-over"] == 0
    assert figures["breakfast.one-move-per"] == 10


def test_every_value_on_the_page_has_its_figure(result: LessonResult) -> None:
    figures = {figure.id: figure for figure in result.figures}
    comparison = result.comparisons["breakfast"]
    for row in comparison.rows:
        for side, held in zip(("at-home", "on-the-way"), row.sides, strict=True):
            assert figures[f"breakfast.{row.id}.{side}"].value == held.shown.value
        assert figures[f"breakfast.{row.id}.gap"].value == row.gap.size
    for counted in result.movements["move-breakfast"].counts:
        assert figures[f"breakfast.{counted.row.id}.count"].value == counted.count.whole
        assert figures[f"breakfast.{counted.row.id}.left-over"].value == counted.count.left_over
    assert len(figures) == len(result.figures)


def by_hand(figure: Figure) -> Fraction:
    """The figure's value worked out again from the words of its steps alone."""
    steps = dict(map(step_words, figure.steps))
    if "subtraction" in steps:
        larger, smaller = re.findall(r"[\d.]+", steps["subtraction"])[:2]
        return number(larger) - number(smaller)
    if "sum" in steps:
        return sum(map(number, steps["sum"].split(" = ")[0].split(" + ")), Fraction(0))
    if "division" in steps:
        gap, per = map(number, re.findall(r"[\d.]+", steps["division"])[:2])
        whole = gap // per
        return whole if figure.unit is Tally.TIMES else gap - whole * per
    per_100g = number(re.findall(r": ([\d.]+) \w+ in 100 g", steps["record"])[0])
    grams = number(re.findall(r"([\d./]+) g", steps["portion"])[-1])
    exact = per_100g * grams / 100
    assert exact == figure.exact
    step = 5 if exact <= 50 else 10  # 21 CFR 101.9(c)(1), status S
    return (exact / step + Fraction(1, 2)) // 1 * step


def test_each_figure_can_be_worked_out_from_its_own_trace(result: LessonResult) -> None:
    for figure in result.figures:
        as_written = figure.kind is FigureKind.ONE_MOVE_PER
        if not as_written and "own value" not in step_words(figure.steps[0])[1]:
            assert by_hand(figure) == figure.value, figure


def test_a_value_from_a_record_names_record_portion_amount_and_rounding(
    result: LessonResult,
) -> None:
    what, says = zip(*map(step_words, result.figures[0].steps), strict=True)
    assert what == ("record", "portion", "amount", "rounding")
    assert "FDC 173905" in says[0]
    assert "SR Legacy, 2018-04" in says[0]
    assert says[1] == "1 cup weighs 234 g"
    assert says[2] == "71 × 234 ÷ 100 = 166.14 kcal"
    assert "21 CFR 101.9(c)(1)" in says[3]


def test_an_own_value_names_its_source_and_is_not_rounded_again(tmp_path: Path) -> None:
    text = GOOD.replace(
        "value: 110, source: carton", "value: 113, source: carton, read_on: 2026-03-14"
    )
    figure = next(
        one
        for one in worked(tmp_path, text).figures
        if one.id == "breakfast.apple-raw_juice.on-the-way"
    )
    assert (figure.value, figure.exact) == (Decimal(113), Fraction(113))
    assert step_words(figure.steps[0])[1] == "own value: carton, read on 2026-03-14, as printed"


def test_a_third_of_a_cup_stays_exact(tmp_path: Path) -> None:
    result = worked(tmp_path, GOOD.replace("amount: 1 cup", "amount: 1/3 cup"))
    figure = result.figures[0]
    assert figure.exact == Fraction(71) * 234 / 300
    assert by_hand(figure) == figure.value


def test_the_unrounded_gap_is_kept(result: LessonResult) -> None:
    figure = next(
        one for one in result.figures if one.id == "breakfast.bagel-plain_oatmeal-cooked.gap"
    )
    assert figure.exact == Fraction("261.36") - Fraction("166.14")
    assert "95.22 kcal" in step_words(figure.steps[0])[1]


def test_sides_turned_round_hold_the_same_gaps(tmp_path: Path) -> None:
    turned = GOOD.replace(
        "[{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]",
        "[{food: bagel-plain, amount: 1 bagel}, {food: oatmeal-cooked, amount: 1 cup}]",
    )
    one, other = (worked(tmp_path, text).comparisons["breakfast"] for text in (GOOD, turned))
    assert one.rows[0].gap.size == other.rows[0].gap.size
    assert (one.rows[0].gap.holder, other.rows[0].gap.holder) == (1, 0)


def test_rows_that_lean_both_ways_make_a_smaller_total(tmp_path: Path) -> None:
    text = GOOD.replace("value: 110", "value: 20")
    comparison = worked(tmp_path, text).comparisons["breakfast"]
    assert [row.gap.holder for row in comparison.rows] == [1, 0]
    assert comparison.total.size == 30
