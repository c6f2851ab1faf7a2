"""A trace can be read by people and by programs, and both say the same."""

from __future__ import annotations

import json
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest

from generator.author.brings_words import brings_words
from generator.author.step_words import plain, step_words
from generator.author.trace_text import trace_json, trace_lines
from generator.compute.label import label_value
from generator.compute.steps import LabelRounding
from generator.model.measure import Measure
from tests.project import GOOD, worked
from tests.site_data.test_lessons import RESULTS


def test_lines(tmp_path: Path) -> None:
    figures = worked(tmp_path, GOOD).figures
    lines = list(trace_lines(figures))
    heads = [line for line in lines if not line.startswith(" ")]
    assert heads == [f"{figure.id}: {figure.value} {figure.unit}" for figure in figures]
    assert lines[0] == "breakfast.bagel-plain_oatmeal-cooked.at-home: 170 kcal"
    assert lines[1].startswith("    record: USDA FoodData Central, SR Legacy")
    steps = [line for line in lines if line.startswith(" ") and not line.startswith("    brings: ")]
    assert len(steps) == sum(len(figure.steps) for figure in figures)
    # FDC 171688 holds 2.4 g of fiber and 4.6 mg of vitamin C in 100 g [R]; 150 g of it, by hand.
    fiber = "fiber: 3.6 g ÷ 28 g = 12.9 percent, shown as 13 (21 CFR 101.9(d)(7)(ii))"
    assert f"    brings: {fiber}; 21 CFR 101.54: 10 percent or more" in lines


def test_no_number_has_zeros_that_say_nothing(tmp_path: Path) -> None:
    """However an educator writes a value of her own: ``3.0`` and ``1.50`` are 3 and 1.5."""
    row = "- [{name: Milk, value: 3.0, source: carton}, {name: Cream, value: 1.5, source: carton}]"
    start, end = GOOD.index("        - [{food: oat"), GOOD.index("      solve:")
    text = GOOD[:start] + f"        {row}\n" + GOOD[end:]
    text = text.replace("measure: energy", "measure: saturated_fat")
    text = text.replace("_per: 10", "_per: 0.5").replace("[march, side-step]", "[march]")
    figures = worked(tmp_path, text).figures
    lines = "\n".join(trace_lines(figures))
    assert "breakfast.cream_milk.at-home: 3 g\n" in lines
    assert "3 − 1.5 = 1.5 g" in lines
    assert "sum: 3, the shown value of the only food" in lines
    assert "3.0" not in lines + trace_json(figures)


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
        assert one["brings"] == list(brings_words(figure))
        assert one["foods"] == [held.id for held in figure.foods]


def test_a_day_is_traced_to_published_bodies_and_equations() -> None:
    """Reference adults: IOM 2005 [S]; woman of 19 and older, low active: NASEM 2023, table 5-8 [S].

    Even within a tenth of what the day took: our own measure, no source.
    """
    took = Decimal("575.77") - Decimal("7.01") * 40 + Decimal("6.60") * 163 + Decimal("12.14") * 57
    assert took == Decimal("2063.15")
    lines = list(trace_lines(RESULTS["two-days"].figures))
    eaten = next(one for one in RESULTS["two-days"].figures if one.id == "rainy-day.eaten")
    ate = sum((held.shown.exact for held in eaten.foods), Fraction(0))
    gap = next(one for one in RESULTS["two-days"].figures if one.id == "rainy-day.gap")
    assert gap.exact == abs(Fraction(took) - ate) != gap.value
    begin = lines.index("rainy-day.needed: 2060 kcal")
    assert lines[begin + 1 : begin + 7] == [
        "    record: reference woman: 163 cm, 57 kg (IOM 2005, Dietary Reference Intakes for Energy)",
        (
            "    equation: NASEM 2023, woman of 40 years, low active: "
            f"575.77 − 7.01 × 40 + 6.60 × 163 + 12.14 × 57 = {took} kcal a day"
        ),
        f"    rounding: to the nearest 10 kcal: {took} → 2060",
        "rainy-day.gap: 180 kcal",
        (
            f"    subtraction: 2060 − 1880 = {2060 - 1880}, between shown values; "
            f"before rounding the gap is {plain(abs(Fraction(took) - ate))} kcal"
        ),
        f"    lean: 1880 ÷ 2060 = 0.91: even; up to {2060 // 10} kcal is even",
    ]


def test_minutes_of_a_move_are_traced_to_published_costs_and_weights() -> None:
    """Youth Compendium 2018, 85100X [S]; CDC 2000 wtage.csv, 9 years [R]; Schofield 1985, 3-10 years [S]."""
    boy = Decimal("22.706") * Decimal("28.68") + Decimal("504.3")
    girl = Decimal("20.315") * Decimal("29.14") + Decimal("485.9")
    resting = (boy + girl) / 2
    minutes = round(Decimal(140) / ((3 - 1) * resting / 1440), 1)
    lines = list(trace_lines(RESULTS["river-walk"].figures))
    begins = next(at for at, line in enumerate(lines) if ".minutes: " in line)
    found = [line.strip() for line in lines[begins + 1 : begins + 4]]
    assert found == [
        "record: Hand-weight exercises: 3.0 METy at 9 years (youth-compendium-2018, 85100X, status S)",
        (
            "resting energy: mean of a boy of 28.68 kg and a girl of 29.14 kg (CDC 2000 medians), "
            "Schofield 1985: (22.706 × 28.68 + 504.3 + 20.315 × 29.14 + 485.9) ÷ 2 = "
            f"{resting.normalize()} kcal a day"
        ),
        (
            f"minutes: 140 kcal ÷ ((3.0 METy − 1) × {round(resting, 2)} kcal a day ÷ 1440 minutes a day) "
            f"= {minutes}; for teaching notes only"
        ),
    ]


@pytest.mark.parametrize(
    ("measure", "exact", "says"),
    [
        ("energy", "4.9", "(c)(1): under 5 kcal is shown as 0; half goes up: 4.9 → 0 kcal"),
        ("energy", "47", "(c)(1): to the nearest 5 kcal up to 50; half goes up: 47 → 45 kcal"),
        ("energy", "95", "(c)(1): to the nearest 10 kcal above 50; half goes up: 95 → 100 kcal"),
        ("saturated_fat", "0.4", "(c)(2): under 0.5 g is shown as 0; half goes up: 0.4 → 0 g"),
        ("saturated_fat", "4.3", "(c)(2): to the nearest 0.5 g below 5; half goes up: 4.3 → 4.5 g"),
        ("saturated_fat", "5", "(c)(2): to the nearest 1 g from 5; half goes up: 5 → 5 g"),
        ("fiber", "1/3", "(c)(6): under 0.5 g is shown as 0; half goes up: 1/3 → 0 g"),
        ("fiber", "7/3", "(c)(6): to the nearest 1 g; half goes up: 7/3 → 2 g"),
    ],
)
def test_a_label_s_rule_is_said_as_far_as_it_served(measure: str, exact: str, says: str) -> None:
    """21 CFR 101.9(c) [S]; what compute keeps of it speaks no language."""
    found = Measure(measure)
    shown = label_value(found, Fraction(exact))
    assert shown.rounding
    step = LabelRounding(shown.exact, shown.value, shown.rounding, found.unit)
    assert step_words(step) == ("rounding", f"21 CFR 101.9{says}")
