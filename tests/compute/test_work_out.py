"""Every number of a lesson comes from its records, and its trace can be worked out again by hand."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest

from generator.compute.result import LessonResult
from generator.compute.trace import Figure, trace
from tests.project import GOOD, worked


@pytest.fixture
def result(tmp_path: Path) -> LessonResult:
    return worked(tmp_path, GOOD)


def number(text: str) -> Fraction:
    return Fraction(text)


def test_shown_values_gaps_and_counts(result: LessonResult) -> None:
    """Oatmeal 71 kcal and 234 g a cup: references of USDA SR Legacy 173905 (status R), 170 shown (C)."""
    figures = {figure.id: figure.value for figure in trace(result)}
    assert figures["breakfast.row-1.first"] == 170
    assert figures["breakfast.row-1.second"] == 260  # bagel 174899: 264 kcal, 99 g, so 261.36
    assert figures["breakfast.row-1.gap"] == 90
    assert figures["breakfast.row-2.first"] == 80  # apple 171688: 52 kcal, so 78 in 150 g
    assert figures["breakfast.row-2.second"] == 110  # as printed on the carton
    assert figures["breakfast.total.first"] == 250
    assert figures["breakfast.total.second"] == 370
    assert figures["breakfast.total.gap"] == 120
    assert figures["move-breakfast.card-1.count"] == 9
    assert figures["move-breakfast.card-2.count"] == 3


def test_every_value_on_the_page_has_its_figure(result: LessonResult) -> None:
    figures = {figure.id: figure for figure in trace(result)}
    comparison = result.comparisons["breakfast"]
    for at, row in enumerate(comparison.rows, 1):
        for side, held in zip(("first", "second"), row.sides, strict=True):
            assert figures[f"breakfast.row-{at}.{side}"].value == held.shown.value
        assert figures[f"breakfast.row-{at}.gap"].value == row.gap.size
    for at, counted in enumerate(result.movements["move-breakfast"].counts, 1):
        assert figures[f"move-breakfast.card-{at}.count"].value == counted.count.whole
        assert figures[f"move-breakfast.card-{at}.left-over"].value == counted.count.left_over
    assert len(figures) == len(trace(result))


def by_hand(figure: Figure) -> Fraction:
    """The figure's value worked out again from the words of its steps alone."""
    steps = {step.what: step.says for step in figure.steps}
    if "subtraction" in steps:
        larger, smaller = re.findall(r"[\d.]+", steps["subtraction"])[:2]
        return number(larger) - number(smaller)
    if "sum" in steps:
        return sum(map(number, steps["sum"].split(" = ")[0].split(" + ")), Fraction(0))
    if "division" in steps:
        gap, per = map(number, re.findall(r"[\d.]+", steps["division"])[:2])
        whole = gap // per
        return whole if figure.unit == "times" else gap - whole * per
    per_100g = number(re.findall(r": ([\d.]+) \w+ in 100 g", steps["record"])[0])
    grams = number(re.findall(r"([\d./]+) g", steps["portion"])[-1])
    exact = per_100g * grams / 100
    assert exact == figure.exact
    step = 5 if exact <= 50 else 10  # 21 CFR 101.9(c)(1), status S
    return (exact / step + Fraction(1, 2)) // 1 * step


def test_each_figure_can_be_worked_out_from_its_own_trace(result: LessonResult) -> None:
    for figure in trace(result):
        if "own value" not in figure.steps[0].says:
            assert by_hand(figure) == figure.value, figure


def test_a_value_from_a_record_names_record_portion_amount_and_rounding(
    result: LessonResult,
) -> None:
    steps = trace(result)[0].steps
    assert [step.what for step in steps][:4] == ["record", "portion", "amount", "rounding"]
    assert "FDC 173905" in steps[0].says
    assert "SR Legacy, 2018-04" in steps[0].says
    assert steps[1].says == "1 cup weighs 234 g"
    assert steps[2].says == "71 × 234 ÷ 100 = 166.14 kcal"
    assert "21 CFR 101.9(c)(1)" in steps[3].says


def test_an_own_value_names_its_source_and_is_not_rounded_again(tmp_path: Path) -> None:
    text = GOOD.replace(
        "value: 110, source: carton", "value: 113, source: carton, read_on: 2026-03-14"
    )
    figure = next(
        one for one in trace(worked(tmp_path, text)) if one.id == "breakfast.row-2.second"
    )
    assert (figure.value, figure.exact) == (Decimal(113), Fraction(113))
    assert figure.steps[0].says == "own value: carton, read on 2026-03-14"


def test_a_third_of_a_cup_stays_exact(tmp_path: Path) -> None:
    result = worked(tmp_path, GOOD.replace("amount: 1 cup", "amount: 1/3 cup"))
    figure = trace(result)[0]
    assert figure.exact == Fraction(71) * 234 / 300
    assert by_hand(figure) == figure.value


def test_the_unrounded_gap_is_kept(result: LessonResult) -> None:
    figure = next(one for one in trace(result) if one.id == "breakfast.row-1.gap")
    assert figure.exact == Fraction("261.36") - Fraction("166.14")
    assert "95.22 kcal" in figure.steps[0].says


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
