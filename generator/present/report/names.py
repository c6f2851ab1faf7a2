"""What the lessons and stops of a report are called, where the site has them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from generator.compute.result import LessonResult
from generator.model.text_marks import For
from generator.model.texts import lesson_texts
from generator.present.stops.in_lesson import stop_names
from generator.present.words.prose import plain
from generator.present.words.say import Say


@dataclass(frozen=True, slots=True)
class LessonNames:
    """A lesson of the site."""

    title: str
    stops: Mapping[str, str]
    """By the id of a stop, in the order of the page: what it is called."""
    questions: Mapping[str, str]
    """By the id of a stop: what it asks."""


def lesson_names(result: LessonResult, say: Say) -> LessonNames:
    """The names of a lesson in a language."""
    title = plain(result.lesson.file.title)
    return LessonNames(title, stop_names(result, say), _questions(result))


def _questions(result: LessonResult) -> Mapping[str, str]:
    ids = [one.stop for one in result.lesson.ids]
    return {
        ids[text.stop]: plain(text.text)
        for text in lesson_texts(result.lesson.file, For.LEARNER_READS)
        if text.stop is not None and text.path[-1] == "prompt"
    }
