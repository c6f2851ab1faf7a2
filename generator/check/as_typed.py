"""Every text of a lesson and of its translations, where it was typed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from generator.compute.result import LessonResult
from generator.model.places import Path, Places
from generator.model.texts import lesson_texts


@dataclass(frozen=True, slots=True)
class Typed:
    """A text in its file."""

    text: str
    """As the educator wrote it."""
    path: Path
    """Keys and numbers from the top of its file."""
    places: Places
    """Of the file."""

    @property
    def begins_with(self) -> str:
        """The sign its value begins with in the file: a quote or a bar where it is written with one."""
        place = self.places.at(*self.path)
        line = self.places.lines[place.line - 1] if place.line <= len(self.places.lines) else ""
        return line[place.column - 1 : place.column]


def typed_texts(result: LessonResult) -> Iterator[Typed]:
    """The lesson's own texts in the order of its file, then those of each translation."""
    lesson = result.lesson
    for one in lesson_texts(lesson.file):
        yield Typed(one.text, one.path, lesson.places)
    for translation in lesson.translations.values():
        for path, text in translation.texts.items():
            yield Typed(text, path, translation.places)
