"""The demo lessons read no harder than the youngest grade they are for, and one above, in each language."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from generator.check.reading import known_words, learner_text, sentences_easy_to_read
from generator.compute.result import LessonResult
from generator.language import language_of
from generator.model.lesson import Lesson
from generator.model.texts import in_language
from generator.read.lesson import read_lesson
from generator.steps.filled import worked_out
from tests.project import ROOT, library


def _results() -> Iterator[object]:
    for file in sorted(ROOT.glob("lessons/*/lesson.yaml")):
        lesson = read_lesson(ROOT, file.relative_to(ROOT).as_posix(), library())
        assert isinstance(lesson, Lesson), list(map(str, lesson))
        yield _named(lesson)
        for language in lesson.translations:
            yield _named(in_language(lesson, language, str, str))


def _named(lesson: Lesson) -> object:
    result = worked_out(lesson, library())
    return pytest.param(result, id=f"{Path(lesson.places.file).parent.name}-{lesson.language}")


RESULTS = tuple(_results())
each_lesson = pytest.mark.parametrize("result", RESULTS)


@each_lesson
def test_a_lesson_reads_like_its_first_grade_or_one_above(result: LessonResult) -> None:
    """Flesch-Kincaid (Kincaid and others 1975) and Szigriszt-Pazos 1993: references.md 7 (S).

    The scale of Szigriszt-Pazos tells nothing apart below grade 4.
    """
    formula = language_of(result.lesson.language).reading_level
    assert formula
    found = formula.reading(learner_text(result.lesson), known_words(result))
    assert found
    assert found.grade <= max(result.lesson.file.grades.first + 1, 4), found


@each_lesson
def test_no_sentence_reads_harder_than_the_lessons_grades(result: LessonResult) -> None:
    assert [str(problem) for problem in sentences_easy_to_read(result)] == []
