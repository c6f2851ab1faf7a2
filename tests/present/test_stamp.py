"""Paper printed from another text or with another number carries another stamp."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.model.measure import Measure
from generator.model.texts import in_language
from generator.present.words.stamp import print_stamp
from generator.read.lesson import read_lesson
from tests.project import GOOD, ROOT, library, worked


def test_a_word_of_the_lesson_changes_it(tmp_path: Path) -> None:
    before = print_stamp(worked(tmp_path, GOOD))
    assert len(before) == 6
    assert print_stamp(worked(tmp_path, GOOD)) == before
    assert print_stamp(worked(tmp_path, GOOD.replace("We will see.", "Let us see."))) != before


def test_a_number_of_a_day_changes_it() -> None:
    """A record may be corrected while the lesson stays as it is."""
    lesson = read_lesson(ROOT, "lessons/two-days/lesson.yaml", library())
    assert isinstance(lesson, Lesson)
    result = work_out(lesson, library())
    food = next(held.food for held in result.holdings if held.food)
    energy = food.value(Measure.ENERGY)
    assert energy is not None
    per_100g = food.entry.per_100g.model_copy(update={"energy": energy + 100})
    other = replace(food, entry=food.entry.model_copy(update={"per_100g": per_100g}))
    corrected = replace(library(), foods={**library().foods, food.id: other})
    assert print_stamp(work_out(lesson, corrected)) != print_stamp(result)


def test_each_language_has_its_own() -> None:
    lesson = read_lesson(ROOT, "lessons/soup-night/lesson.yaml", library())
    assert isinstance(lesson, Lesson)
    spanish = in_language(lesson, "es", str, str)
    stamps = {print_stamp(work_out(one, library())) for one in (lesson, spanish)}
    assert len(stamps) == 2
