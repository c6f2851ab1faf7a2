"""Questions whose answer the lesson computes, and cannot."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.answers import PARTING
from generator.compute.result import LessonResult, NoAnswer
from generator.model.places import Path
from generator.problems import Problem


@rule
def answers_can_be_said(result: LessonResult) -> Iterator[Problem]:
    """An unknown name of a number, units that do not go together, or an answer that is not whole."""
    lesson = result.lesson
    for stop, answer in result.answers.items():
        if isinstance(answer, NoAnswer):
            path: Path = ("parting",)
            if stop != PARTING:
                index = next(at for at, ids in enumerate(lesson.ids) if ids.stop == stop)
                path = ("stops", index, lesson.file.stops[index].kind)
            yield Problem(lesson.places.at(*path, answer.key), answer.what, answer.hint)
