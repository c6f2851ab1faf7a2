"""Every text of a lesson that someone reads or hears, with its place."""

from __future__ import annotations

from collections.abc import Iterator

from pydantic import BaseModel

from generator.model.lesson import Lesson
from generator.model.places import Path
from generator.problems import Place

_NOT_WORDS = {
    "id",
    "kind",
    "food",
    "moves",
    "compare",
    "measure",
    "standards",
    "file",
    "poster",
    "captions",
    "solve",
    "aim",
    "read_on",
}
"""Fields that hold names and codes."""


def lesson_texts(lesson: Lesson) -> Iterator[tuple[Place, str]]:
    """Walk the lesson's own words in the order of its file."""
    for path, text in _walk(lesson.file, ()):
        yield lesson.places.at(*path), text


def _walk(value: object, path: Path) -> Iterator[tuple[Path, str]]:
    if isinstance(value, str):
        yield path, value
    elif isinstance(value, BaseModel):
        for name, field in type(value).model_fields.items():
            if name not in _NOT_WORDS:
                yield from _walk(getattr(value, name), (*path, field.alias or name))
    elif isinstance(value, tuple):
        for index, entry in enumerate(value):
            kind = getattr(entry, "kind", None)  # a stop's keys stand below its kind
            yield from _walk(entry, (*path, index, kind) if kind else (*path, index))
