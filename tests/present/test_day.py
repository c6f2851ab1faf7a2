"""The view of a day: what the learner sees before and after deciding, and the tilt of the beam."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from generator.present.stops.day import STEEPEST, beam_tilt
from generator.steps.work import work
from tests.made import outputs
from tests.site_project import copy_project

LESSON = """\
title: A day by the river
summary: A day to think about.
grades: 3-5
minutes: 10
stops:
  - day:
      id: nadia
      person: {name: Nadia, age: 9, sex: girl, activity: active}
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


@pytest.mark.parametrize(
    ("ratio", "degrees"),
    [
        (Fraction(1), "0"),
        (Fraction(11, 10), "-2.8"),  # eaten hangs on the left, so more eaten turns the beam left
        (Fraction(9, 10), "2.8"),
        (Fraction(3), str(-STEEPEST)),
        (Fraction(0), str(STEEPEST)),
    ],
)
def test_the_beam_tilts_by_the_ratio(ratio: Fraction, degrees: str) -> None:
    assert float(beam_tilt(ratio)) == float(degrees)


def test_a_day_adds_shown_values_and_takes_the_need_from_the_equation(project: Path) -> None:
    (result,) = work(project).results
    balance = result.days["nadia"].balance
    # 170 and 150: references.md 3.4, status R and C; 250 as printed on the invented menu
    assert balance.eaten == 170 + 150 + 250
    # NASEM 2023, girls, active (S): −189.55 − 22.25 × 9 + 11.74 × 133.1 + 18.34 × 29.14 + 30 (C)
    assert balance.needed == 1740


def test_no_body_and_no_need_is_shown_before_the_learner_checks(project: Path) -> None:
    html = next(one.content.decode() for one in outputs(project) if one.path == "a-day/index.html")
    before, _, after = html.partition("<details data-working>")
    assert "1,740" not in before
    assert "1,740" in after
    for body in ("133.1", "29.14", " kg", " cm"):
        assert body not in html


def test_the_foods_of_a_day_count_for_the_line_about_allergens(project: Path) -> None:
    """Milk is one of the nine major allergens (FALCPA 2004, FASTER Act 2021)."""
    page = next(one for one in outputs(project) if one.path == "a-day/index.html")
    assert "Foods in this lesson can hold milk." in page.content.decode()
