"""An amount that a language has no words for is told, with its line and a way out."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from generator.check.amounts import amounts_said
from generator.compute.result import LessonResult
from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.texts import in_language
from generator.model.translation import Translation
from tests.project import GOOD, library, read


def with_portion(units: dict[str, dict[str, str]]) -> Library:
    """The library with a portion of oatmeal in a unit that no table has."""
    oatmeal = library().foods["oatmeal-cooked"]
    cup = oatmeal.entry.portions[0]
    names = {"en": "1 bowl", "es": "1 escudilla"}
    bowl = cup.model_copy(update={"names": names, "units": units})
    entry = oatmeal.entry.model_copy(update={"portions": (cup, bowl)})
    return replace(
        library(), foods={**library().foods, "oatmeal-cooked": replace(oatmeal, entry=entry)}
    )


def in_spanish(lesson: Lesson, held: Library) -> LessonResult:
    """The lesson beside a translation, worked out in it."""
    beside = replace(lesson, translations={"es": Translation("es", {}, {}, lesson.places)})
    return work_out(in_language(beside, "es", str, str), held)


def lesson(folder: Path, text: str) -> Lesson:
    made = read(folder, text)
    assert isinstance(made, Lesson), made
    return made


def told(result: LessonResult) -> list[str]:
    return [str(problem) for problem in amounts_said(result)]


@pytest.fixture
def bowls(tmp_path: Path) -> Lesson:
    """A lesson with three bowls of oatmeal, which only its own portion knows."""
    made = lesson(tmp_path, GOOD)
    stops = list(made.file.stops)
    stop = stops[2]
    rows = list(stop.rows)  # type: ignore[attr-defined]  # the third stop of GOOD is a comparison
    first = rows[0].foods[0].model_copy(update={"amount": "3 bowls"})
    rows[0] = rows[0].model_copy(update={"foods": (first, rows[0].foods[1])})
    stops[2] = stop.model_copy(update={"rows": tuple(rows)})
    return replace(made, file=made.file.model_copy(update={"stops": tuple(stops)}))


def test_several_of_a_unit_that_spanish_does_not_know_are_told(bowls: Lesson) -> None:
    (problem,) = told(in_spanish(bowls, with_portion({})))
    assert problem.startswith("lessons/meal/lesson.yaml:21:")
    assert "“3 bowls” cannot be said in es" in problem
    assert "add `units: {es: {one: …, other: …}}` to this portion of `oatmeal-cooked`" in problem


def test_with_words_of_its_own_it_is_said(bowls: Lesson) -> None:
    words = {"es": {"one": "escudilla", "other": "escudillas"}}
    assert told(in_spanish(bowls, with_portion(words))) == []


def test_english_has_what_the_lesson_says(bowls: Lesson) -> None:
    assert told(work_out(bowls, with_portion({}))) == []


def test_a_value_of_ones_own_is_said_in_grams_or_not_at_all(tmp_path: Path) -> None:
    juice = "{name: Juice, value: 110, source: carton%s}"
    for amount, asked in (("", False), (", amount: 240 g", False), (", amount: 1 carton", True)):
        made = lesson(tmp_path, GOOD.replace(juice % "", juice % amount))
        assert bool(told(in_spanish(made, library()))) is asked
        assert told(work_out(made, library())) == []
