"""What the lessons and stops of a report are called, where the site has them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from generator.compute.finish_layout import finish_layout
from generator.compute.result import LessonResult
from generator.model.text_marks import For
from generator.model.texts import lesson_texts
from generator.present.finish_file import answer_names
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
    numbers: str = ""
    """The mark of its numbers, as a code has it; empty where they are not known."""
    answers: Mapping[str, str] = field(default_factory=dict)
    """By the id of an answer that counts, in the order of the page: what it is called; without those to
    questions that are asked again."""


def lesson_names(result: LessonResult, say: Say) -> LessonNames:
    """The names of a lesson in a language."""
    title = plain(result.lesson.file.title)
    layout = finish_layout(result)
    again = {layout.answers[at] for at in layout.asked_again}
    answers = {one: name for one, name in answer_names(result, say).items() if one not in again}
    return LessonNames(
        title, stop_names(result, say), _questions(result), str(layout.numbers), answers
    )


def _questions(result: LessonResult) -> Mapping[str, str]:
    ids = [one.stop for one in result.lesson.ids]
    return {
        ids[text.stop]: plain(text.text)
        for text in lesson_texts(result.lesson.file, For.LEARNER_READS)
        if text.stop is not None and text.path[-1] == "prompt"
    }
