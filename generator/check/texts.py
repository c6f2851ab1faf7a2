"""Every text of a lesson that someone reads or hears, with its place."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.lesson import Lesson
from generator.model.texts import file_texts
from generator.problems import Place


def lesson_texts(lesson: Lesson) -> Iterator[tuple[Place, str]]:
    """The lesson's own words in the order of its file."""
    for path, text in file_texts(lesson.file):
        yield lesson.places.at(*path), text
