"""A measure is one entry: all else follows, and what has to be written beside it is named."""

from __future__ import annotations

import os
import pickle
import shutil
import subprocess
import sys
from fractions import Fraction
from itertools import pairwise
from pathlib import Path

import pytest

from generator.compute.label import label_value
from generator.compute.plausible import most_possible, two_days_worth
from generator.language import KNOWN
from generator.model.food_record import FIGURES
from generator.model.label_rule import Step
from generator.model.measure import Measure
from generator.present.words.say import Say
from generator.read.fooddata.layout import NUTRIENTS, UNITS
from tests.measure_gaps import gaps
from tests.project import library

ROOT = Path(__file__).parents[2]


@pytest.mark.parametrize("measure", Measure)
def test_nothing_is_missing(measure: Measure) -> None:
    assert list(gaps(measure)) == []


@pytest.mark.parametrize("measure", Measure)
def test_a_member_is_its_name_and_stays_itself(measure: Measure) -> None:
    assert measure == measure.value == measure.entry.name == f"{measure}" == measure.name.lower()
    assert pickle.loads(pickle.dumps(measure)) is measure  # noqa: S301  # our own bytes


@pytest.mark.parametrize("measure", Measure)
def test_every_step_is_reached(measure: Measure) -> None:
    steps = measure.entry.label.steps
    assert [step.until for step in steps].count(None) == 1
    assert steps[-1].until is None
    for finer, coarser in pairwise(steps):
        assert finer.size < coarser.size
        assert coarser.until is None or (finer.until or 0) < coarser.until


def test_a_limit_is_in_or_out() -> None:
    assert Step(5, until=Fraction(50)).serves(Fraction(50))
    assert not Step(5, until=Fraction(50), limit_is_in=False).serves(Fraction(50))


def test_no_nutrient_is_two_measures() -> None:
    """Nutrient ids of FoodData Central (status R: nutrient.csv of SR Legacy; 2033, 2047, 2048 S)."""
    ids = [nutrient for known in NUTRIENTS.values() for nutrient in known]
    assert len(ids) == len(set(ids))
    assert set(UNITS) == set(NUTRIENTS) == set(FIGURES)
    assert NUTRIENTS["calcium"] == (1087,)
    assert NUTRIENTS["iron"] == (1089,)
    assert NUTRIENTS["potassium"] == (1092,)
    assert NUTRIENTS["vitamin_c"] == (1162,)


@pytest.mark.parametrize("measure", Measure)
def test_what_is_called_so_on_the_page_is_found_in_a_claim(measure: Measure) -> None:
    for tag, language in KNOWN.items():
        say = Say(library().words[tag])
        assert language.claims.measures[measure].search(say(f"measure_{measure}")), tag
        assert f", {measure.unit}." in say(f"about_{measure}"), tag


ENTRY = """\
    IODINE = MeasureEntry(
        "iodine",
        Unit.MILLIGRAM,
        nutrients=(1100,),
        label=_vitamin("0.1"),
        daily_value=Decimal("0.15"),
        most=_PURE_IN_MG,
    )
"""
LESSON = """\
title: Two soups
summary: Find the gap.
grades: 3-5
minutes: 10
goals: [Subtract.]
stops:
  - compare:
      id: soups
      measure: iodine
      sides: [Here, There]
      rows:
        - [{name: Seaweed soup, value: 2.5, source: carton}, {SECOND}]
      solve: [gap]
"""
OWN = "name: Bean soup, value: 0.3, source: carton"
WORDS = (
    "measure_iodine: iodine\nabout_iodine: Iodine is a mineral. It is weighed in milligrams, mg.\n"
)


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    """The project with one more measure in its table and nothing else changed."""
    folder = tmp_path / "copy"
    for name in (
        "generator",
        "site_data",
        "theme",
        "lessons/guide",
        "lessons/es",
        "tests/examples",
    ):
        hidden = shutil.ignore_patterns("__pycache__")
        shutil.copytree(ROOT / name, folder / name, ignore=hidden)
    for name in ("lessons/sources.md", "mkdocs.yml", "tests/measure_gaps.py"):
        shutil.copy(ROOT / name, folder / name)
    table = folder / "generator/model/measure.py"
    table.write_text(table.read_text("utf-8") + ENTRY, "utf-8")
    return folder


def run(copy: Path, *words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, *words],
        cwd=copy,
        env={**os.environ, "PYTHONPATH": str(copy)},
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )


def plumline(copy: Path, *words: str) -> subprocess.CompletedProcess[str]:
    return run(copy, "-c", "from generator.cli import main; main()", *words, "--root", str(copy))


def test_a_measure_that_is_added_is_told_all_it_lacks(copy: Path) -> None:
    done = run(copy, "-m", "tests.measure_gaps")
    assert done.returncode == 0, done.stderr
    foods = len(library().foods)
    assert {line for line in done.stdout.splitlines() if line.startswith("iodine: ")} == {
        "iodine: measure_iodine in site_data/words/en.yaml",
        "iodine: about_iodine in site_data/words/en.yaml",
        "iodine: measure_iodine in site_data/words/es.yaml",
        "iodine: about_iodine in site_data/words/es.yaml",
        "iodine: its name in generator/language/en/measures.py",
        "iodine: its name in generator/language/es/measures.py",
        f"iodine: its figures in {foods} entries of site_data/foods.yaml",
        "iodine: its edges in tests/examples/label.json",
        "iodine: site_data/lesson.schema.json",
        "iodine: lessons/guide/lesson-file.md",
        "iodine: its name in site_data/new_lesson.yaml",
        "iodine: how it is rounded in lessons/sources.md",
        "iodine: how it is rounded in lessons/es/sources.md",
    }


def test_with_its_words_it_is_compared_and_no_food_is_taken_for_zero(copy: Path) -> None:
    shutil.rmtree(copy / "lessons")
    for language in ("en", "es"):
        file = copy / f"site_data/words/{language}.yaml"
        file.write_text(file.read_text("utf-8") + WORDS, "utf-8")
    lesson = copy / "lessons/soups/lesson.yaml"
    lesson.parent.mkdir(parents=True)
    lesson.write_text(LESSON.replace("SECOND", "food: apple-raw, amount: 1 medium"), "utf-8")
    refused = plumline(copy, "check")
    assert refused.returncode == 1
    assert "lessons/soups/lesson.yaml:12:" in refused.stderr + refused.stdout
    assert "`apple-raw` in site_data/foods.yaml does not say its iodine" in refused.stderr
    lesson.write_text(LESSON.replace("SECOND", OWN), "utf-8")
    built = plumline(copy, "build")
    assert built.returncode == 0, built.stderr
    page = (copy / "site/soups/index.html").read_text("utf-8")
    assert "Iodine is a mineral." in page
    assert "2.2" in page


@pytest.mark.parametrize("measure", Measure)
def test_every_room_has_an_answer(measure: Measure) -> None:
    assert label_value(measure, Fraction(0)).value == 0
    assert most_possible(measure, Fraction(100)) > 0
    assert two_days_worth(measure) is not None
