"""Paper printed from another text or with another number carries another stamp."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from pathlib import Path

from generator.compute.day import DayBalance
from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
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
    stop, day = next(iter(result.days.items()))
    other = replace(day, balance=DayBalance(day.balance.eaten, day.balance.needed + Decimal(10)))
    changed = replace(result, days={**result.days, stop: other})
    assert print_stamp(changed) != print_stamp(result)


def test_each_language_has_its_own() -> None:
    lesson = read_lesson(ROOT, "lessons/soup-night/lesson.yaml", library())
    assert isinstance(lesson, Lesson)
    spanish = in_language(lesson, "es", str, str)
    stamps = {print_stamp(work_out(one, library())) for one in (lesson, spanish)}
    assert len(stamps) == 2
