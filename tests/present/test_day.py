"""The view of a day: what the learner sees before and after deciding, and how the plumb line hangs."""

from __future__ import annotations

import re
import shutil
from fractions import Fraction
from pathlib import Path

import pytest

from generator.present.pictures.plumb_line import STEEPEST, plumb_tilt
from generator.read.lesson import read_lesson
from generator.steps.work import work
from tests.made import page_outputs
from tests.site_project import copy_project
from tests.worked import library

LESSON = """\
title: A day by the river
summary: A day to think about.
grades: 3-5
minutes: 10
stops:
  - day:
      id: nadia
      person: {name: Nadia, age: 34, sex: woman, activity: active}
      ate:
        - {food: oatmeal-cooked, amount: 1 cup, when: Breakfast}
        - {food: milk-whole, amount: 1 cup}
        - {name: Soup of the hall, value: 250, source: Menu of the hall, when: Lunch}
      did: [Walked to school]
"""


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site of one lesson with one day."""
    root = copy_project(tmp_path_factory.mktemp("day") / "site", lessons=False)
    (root / "lessons/a-day").mkdir()
    (root / "lessons/a-day/lesson.yaml").write_text(LESSON, "utf-8")
    return root


def page(project: Path) -> str:
    """The lesson page."""
    return next(
        one.content.decode() for one in page_outputs(project) if one.path == "a-day/index.html"
    )


@pytest.mark.parametrize(
    ("ratio", "degrees"),
    [
        (Fraction(1), "0"),
        (Fraction(11, 10), "9"),  # clockwise about its upper end: the plum moves to the left
        (Fraction(9, 10), "-9"),
        (Fraction(3), str(STEEPEST)),
        (Fraction(0), str(-STEEPEST)),
    ],
)
def test_the_plumb_line_leans_by_the_ratio(ratio: Fraction, degrees: str) -> None:
    assert float(plumb_tilt(ratio)) == float(degrees)


def test_a_day_adds_shown_values_and_takes_the_need_from_the_equation(project: Path) -> None:
    (result,) = work(project).results
    balance = result.days["nadia"].balance
    # 170 and 150: references.md 3.4, status R and C; 250 as printed on the invented menu
    assert balance.eaten == 170 + 150 + 250
    # NASEM 2023, women, active (S): 710.25 − 7.01 × 34 + 6.54 × 163 + 12.34 × 57 = 2241.31 (C)
    assert balance.needed == 2240


def test_both_numbers_are_given_before_the_question_and_no_body_anywhere(project: Path) -> None:
    html = page(project)
    before, _, after = html.partition("<form")
    for number in ("570", "2,240"):
        assert number in before
    # 2,240 − 570, by hand
    assert "1,670" not in before.partition("<day-balance")[2].partition(">")[2]
    assert "2,240 − 570 = 1,670" in after
    assert "up to 224" in after  # the band, a tenth, stands beside the question
    for body in ("163", " kg", " cm"):
        assert body not in html


@pytest.mark.parametrize("file", ["index.html", "worksheet.html"])
def test_each_meal_has_a_name_of_its_own_for_its_foods(project: Path, file: str) -> None:
    html = next(
        one.content.decode() for one in page_outputs(project) if one.path == f"a-day/{file}"
    )
    table = html.partition('<table class="day">')[2].partition("</table>")[0]
    heads = [
        re.findall('<th scope="(.*?)".*?>(.*?)</th>', meal) for meal in table.split("</tbody>")
    ]
    plain = [[(scope, re.sub("<.*?>|,.*", "", says)) for scope, says in one] for one in heads]
    assert plain == [
        [("rowgroup", "Breakfast"), ("row", "Oatmeal"), ("row", "Whole milk")],
        [("rowgroup", "Lunch"), ("row", "Soup of the hall")],
        [],
    ]


@pytest.mark.parametrize("age", [3, 9, 18])
def test_a_day_of_a_child_is_refused_with_its_place(
    project: Path, tmp_path: Path, age: int
) -> None:
    (tmp_path / "lessons/a-day").mkdir(parents=True)
    shutil.copytree(project / "site_data", tmp_path / "site_data")
    text = LESSON.replace("age: 34", f"age: {age}")
    (tmp_path / "lessons/a-day/lesson.yaml").write_text(text, "utf-8")
    found = read_lesson(tmp_path, "lessons/a-day/lesson.yaml", library())
    assert isinstance(found, list)
    (problem,) = found
    assert "a day is about an adult, never a child" in str(problem)
    assert problem.place.line == 8


def test_the_foods_of_a_day_count_for_the_line_about_allergens(project: Path) -> None:
    """Milk is one of the nine major allergens (FALCPA 2004, FASTER Act 2021)."""
    page = next(one for one in page_outputs(project) if one.path == "a-day/index.html")
    assert "Foods in this lesson contain milk." in page.content.decode()


def with_help(project: Path, tmp_path: Path, help_: str) -> dict[str, str]:
    """Every page of a lesson whose day has so much help, by its path."""
    root = shutil.copytree(project, tmp_path / "site")
    text = LESSON.replace("      did:", f"      help: {help_}\n      did:")
    (root / "lessons/a-day/lesson.yaml").write_text(text, "utf-8")
    return {
        one.path: one.content.decode()
        for one in page_outputs(root)
        if one.path.startswith("a-day/") and one.path.endswith(".html")
    }


def test_a_worked_day_shows_its_subtraction_and_asks_only_which_way(
    project: Path, tmp_path: Path
) -> None:
    pages = with_help(project, tmp_path, "worked")
    for path in ("a-day/index.html", "a-day/worksheet.html"):
        before, _, after = pages[path].partition("Which way does the plum hang?")
        assert "2,240 − 570 = 1,670" in before
        assert "+1,600" in before  # a hop of counting up, on the line
        assert "How far apart" not in before
        assert "To the left. The day gave more." in after
    assert 'name="gap"' not in pages["a-day/index.html"]


def test_a_day_with_hops_draws_them_and_leaves_their_sizes_open(
    project: Path, tmp_path: Path
) -> None:
    pages = with_help(project, tmp_path, "hops")
    before, _, _ = pages["a-day/index.html"].partition("Which way does the plum hang?")
    assert "+1,600" not in before
    assert before.count(">?</text>") >= 2
    assert 'name="gap"' in before


def test_the_plumb_line_stands_on_paper_to_color_and_hangs_on_the_key(
    project: Path, tmp_path: Path
) -> None:
    pages = with_help(project, tmp_path, "none")
    sheet, key = pages["a-day/worksheet.html"], pages["a-day/answers.html"]
    assert "Three hollow plums" in sheet
    assert "Color in the plum that fits." in sheet
    assert "rotate(-30 " in key.partition("plumb-line")[2].partition("</svg>")[0]
    assert "Three hollow plums" not in key
    assert "Color in the plum" not in key
