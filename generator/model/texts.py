"""The words of a lesson apart from its codes and numbers: found, and put in the place of others."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from functools import cache

from generator.model.base import Frozen
from generator.model.lesson import Lesson, LessonFile
from generator.model.places import Path
from generator.problems import Place

NOT_WORDS = frozenset(
    {
        "id",
        "kind",
        "food",
        "moves",
        "compare",
        "measure",
        "standards",
        "video",
        "solve",
        "aim",
        "read_on",
        "sex",
        "activity",
    }
)
"""Fields that hold names and codes."""


def file_texts(file: LessonFile) -> Iterator[tuple[Path, str]]:
    """Every text with its path in the lesson file, in the order of the file."""
    yield from _walk(file, ())


def translatable(lesson: Lesson) -> Iterator[tuple[Path, Path, str]]:
    """Every text a translation must bring: its path there, its path in the lesson, and the text.

    In a translation the stops are named by their ids and the educator's own wordings of foods by
    themselves: ``("stops", "guess", "prompt")``, ``("foods", "Apple pie")``.
    """
    for path, text in file_texts(lesson.file):
        if path[0] != "stops":
            yield path, path, text
        elif "rows" in path or "ate" in path:
            if path[-1] in {"name", "source", "when"}:
                yield ("foods", text), path, text
        elif path[-2:] != ("person", "name"):
            stop_id = lesson.stop_id(int(path[1]))
            yield ("stops", stop_id, *path[3:]), path, text


def with_texts(file: LessonFile, texts: Mapping[Path, str]) -> LessonFile:
    """The same lesson with other words, by their paths in the lesson file."""
    changed = _replaced(file, (), texts)
    return changed if isinstance(changed, LessonFile) else file


def _walk(value: object, path: Path) -> Iterator[tuple[Path, str]]:
    if isinstance(value, str):
        yield path, value
    for inner, entry in _entries(value, path):
        yield from _walk(entry, inner)


def _replaced(value: object, path: Path, texts: Mapping[Path, str]) -> object:
    if isinstance(value, str):
        return texts.get(path, value)
    if isinstance(value, tuple):
        return tuple(_replaced(entry, inner, texts) for inner, entry in _entries(value, path))
    if isinstance(value, Frozen):
        changes = {
            name: _replaced(getattr(value, name), (*path, key), texts)
            for name, key in _fields(type(value))
        }
        return value.model_copy(update=changes)
    return value


def _entries(value: object, path: Path) -> Iterator[tuple[Path, object]]:
    if isinstance(value, Frozen):
        for name, key in _fields(type(value)):
            yield (*path, key), getattr(value, name)
    elif isinstance(value, tuple):
        for index, entry in enumerate(value):
            kind = getattr(entry, "kind", None)  # a stop's keys stand below its kind
            yield ((*path, index, kind) if kind else (*path, index)), entry


@cache
def _fields(kind: type[Frozen]) -> tuple[tuple[str, str], ...]:
    """Fields that may hold words, each with its key in the file."""
    fields = kind.model_fields.items()
    return tuple((name, field.alias or name) for name, field in fields if name not in NOT_WORDS)


def in_language(
    lesson: Lesson, language: str, missing: Callable[[str], str], stale: Callable[[str], str]
) -> Lesson:
    """The lesson with its words in another language it has a translation for.

    Args:
        missing: what stands where the translation has no text, made from the original.
        stale: what stands where the original changed since, made from the translation.
    """
    translation = lesson.translations[language]
    texts: dict[Path, str] = {}
    values: dict[Path, Place] = dict(lesson.places.values)
    for key, path, original in translatable(lesson):
        text = translation.texts.get(key)
        if text is None:
            texts[path] = missing(original)
        else:
            texts[path] = stale(text) if translation.is_stale(key, original) else text
            values[path] = translation.places.at(*key)
    places = replace(lesson.places, values=values)
    return replace(lesson, file=with_texts(lesson.file, texts), places=places, language=language)
