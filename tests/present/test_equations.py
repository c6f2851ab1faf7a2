"""Where a number of an equation is shown to an adult, the equation stands there with its values and its edition."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.compute.result import LessonResult
from generator.present.words.count_truth import count_says, count_sources, count_truths, count_why
from generator.present.words.day_need import day_needs
from generator.present.words.say import Say
from tests.project import GOOD, ROOT, library, worked
from tests.site_data.test_lessons import RESULTS

SAYS = {tag: Say(library().words[tag]) for tag in ("en", "es")}


DAY_LINES = {
    "en": "Mina, 40 years: 575.77 − 7.01 × 40 + 6.60 × 163 + 12.14 × 57 = 2,063.15\N{NO-BREAK SPACE}kcal a day, "
    "shown as 2,060\N{NO-BREAK SPACE}kcal. That is the equation of women, low active: a constant, age in years, "
    "height in cm and weight in kg of a reference woman (163 cm, 57 kg).",
    "es": "Mina, 40 años: 575.77 − 7.01 × 40 + 6.60 × 163 + 12.14 × 57 = 2,063.15\N{NO-BREAK SPACE}kcal al día, "
    "se muestra 2,060\N{NO-BREAK SPACE}kcal. Es la ecuación de las mujeres, día poco activo: una constante, la edad "
    "en años, la estatura en cm y el peso en kg de una mujer de referencia (163 cm, 57 kg).",
}


def demo(name: str) -> LessonResult:
    return RESULTS[name]


def moved(folder: Path, move: str) -> LessonResult:
    return worked(folder, GOOD.replace("[march, side-step]", f"[{move}, {move}]"))


def test_minutes_have_units_activity_code_and_source(tmp_path: Path) -> None:
    """figures.md D10. Push-ups, 30300X, 3.9 METy at 6 to 9 years [S]; the child by hand [C]."""
    result = moved(tmp_path, "floor-push")
    says = [truth.computed for truth in count_truths(result, SAYS["en"])]
    assert "90 ÷ ((3.9 − 1) × 1,116.69 ÷ 1,440), with the gap in kcal, the move in METy" in says[0]
    assert "rest in kcal a day and a day in minutes" in says[0]
    assert "code 30300X" in says[0]
    told = count_sources(result, SAYS["en"])
    equation = (
        "(22.706 × 28.68 + 504.3 + 20.315 × 29.14 + 485.9) ÷ 2 = 1,116.69\N{NO-BREAK SPACE}kcal"
    )
    assert equation in told
    for source in ("Youth Compendium", "Butte and others 2018", "Schofield 1985", "CDC growth charts of 2000"):  # fmt: skip
        assert source in told, source


def test_what_the_count_is_stands_wherever_moves_are_counted() -> None:
    """figures.md D10, texts.md 1.11: notes of lessons without energy had no word on it."""
    for result in RESULTS.values():
        for say in SAYS.values():
            assert bool(count_says(result, say)) == bool(result.movements), result.lesson.id
            assert bool(count_why(result, say)) == bool(result.movements), result.lesson.id


@pytest.mark.parametrize(
    ("lesson", "unit"), [("soup-night", "sodium, in mg"), ("market-drinks", "sugars, in g")]
)
def test_a_gap_in_grams_has_no_minutes_and_it_is_said_why(lesson: str, unit: str) -> None:
    _, why = count_why(demo(lesson), SAYS["en"])
    assert why.startswith(f"The gaps of this lesson are of {unit}.")
    assert "no minutes belong to such a gap" in why
    assert count_truths(demo(lesson), SAYS["en"]) == ()
    assert count_sources(demo(lesson), SAYS["en"]) == ""


def test_the_count_is_set_beside_the_minutes_so_that_it_argues_and_does_not_dose() -> None:
    """texts.md 1.11: 14 bottle lifts take under a minute, at their pace in ``moves.yaml``.

    130 to 150 kcal of them would be about 90 minutes at 9 years: METy 3.0 [S], the child by hand [C],
    140 ÷ ((3.0 − 1) × 1116.69 ÷ 1440) = 90.3.
    """
    lift = next(
        truth
        for truth in count_truths(demo("river-walk"), SAYS["en"])
        if truth.takes.startswith("Bottle lift")
    )
    assert lift.takes == "Bottle lift: 14 counts take under a minute."
    assert "the gap of 140\N{NO-BREAK SPACE}kcal would be about 90 minutes of it" in lift.says
    assert "have nothing to do with each other" in " ".join(
        count_why(demo("river-walk"), SAYS["en"])
    )


def test_a_count_of_a_minute_and_more_is_told_in_minutes(tmp_path: Path) -> None:
    """90 kcal are 45 counts of 2; 24 a minute are 1.9 minutes, so about 2."""
    by_two = GOOD.replace("one_move_per: 10", "one_move_per: 2")
    result = worked(tmp_path, by_two.replace("[march, side-step]", "[floor-push, floor-push]"))
    pace = library().moves["floor-push"].pace
    counted = next(iter(result.movements.values())).moved[0].count.whole
    shown = max(1, round(counted / pace))
    [first, *_] = count_truths(result, SAYS["en"])
    assert counted >= pace
    minutes = f"{shown} minute" + ("s" if shown > 1 else "")
    assert first.takes.endswith(f"{counted} counts take about {minutes}.")


def test_nothing_is_announced_where_nothing_is_published(tmp_path: Path) -> None:
    result = moved(tmp_path, "side-step")
    assert count_says(result, SAYS["en"])
    assert len(count_why(result, SAYS["en"])) == 1
    assert {truth.computed for truth in count_truths(result, SAYS["en"])} == {""}
    assert count_sources(result, SAYS["en"]) == ""


@pytest.mark.parametrize(
    ("language", "line"),
    # Women of 19 and over, low active: NASEM 2023, Table S-1 [S]; body IOM 2005 [M]; by hand [C]
    DAY_LINES.items(),
)
def test_a_day_has_its_equation(language: str, line: str) -> None:
    """figures.md D10."""
    assert line in day_needs(demo("two-days"), SAYS[language])


def test_equations_have_the_decimal_sign_of_the_language(tmp_path: Path) -> None:
    texts = {**library().words["es"].texts, "locale": "es-ES"}
    spain = Say(type(library().words["es"])("es", texts))
    told = count_sources(moved(tmp_path, "floor-push"), spain)
    assert "22,706 × 28,68 + 504,3" in told
    assert "22.706" not in told


@pytest.mark.parametrize("page", ["lessons/sources.md", "lessons/es/sources.md"])
@pytest.mark.parametrize(
    "source",
    [
        "10.17226/26818",  # NASEM 2023
        "Institute of Medicine 2005",
        "Schofield WN 1985",
        "Youth Compendium of Physical Activities",
        "10.1249/MSS.0000000000001430",
        "CDC 2000",
        "21 CFR 101.9(c)",
        "21 CFR 101.54",
        "(FDA)",
    ],
)
def test_the_page_of_sources_names_each_with_its_edition(page: str, source: str) -> None:
    """figures.md D10."""
    assert source in (ROOT / page).read_text("utf-8")
