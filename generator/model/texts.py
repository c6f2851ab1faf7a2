"""The words of a lesson apart from its codes and numbers: found, and put in the place of others."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

from generator.model.base import Frozen
from generator.model.lesson import Lesson, LessonFile
from generator.model.places import Path
from generator.model.stops.base import BaseStop
from generator.model.text_marks import For, TextMark, marked_fields
from generator.problems import Place


@dataclass(frozen=True, slots=True)
class LessonText:
    """One text of a lesson."""

    path: Path
    """Keys and numbers from the top of the lesson file."""
    text: str
    """The words themselves."""
    mark: TextMark
    """Who reads or hears it."""

    @property
    def stop(self) -> int | None:
        """Which stop it stands in, from 0; nothing at the top of the file."""
        return int(self.path[1]) if self.path[0] == "stops" else None


def lesson_texts(file: LessonFile, *whom: For, prose: bool = False) -> Iterator[LessonText]:
    """The one list of a lesson's texts, in the order of its file.

    Args:
        file: the lesson.
        whom: only texts for these; all that anyone reads or hears where nobody is named.
        prose: whether only sentences are wanted, and no headings and names.
    """
    for one in _walk(file, ()):
        if (not whom or one.mark.whom in whom) and (one.mark.in_sentences or not prose):
            yield one


def translatable(lesson: Lesson) -> Iterator[tuple[Path, Path, str]]:
    """Every text a translation must bring: its path there, its path in the lesson, and the text.

    A text with braces comes as it is written, and not as it is filled. In a translation the stops are named by their ids and the educator's own wordings of foods by
    themselves: ``("stops", "guess", "prompt")``, ``("foods", "Apple pie")``.
    """
    for key, one in _keyed(lesson):
        filling = lesson.fillings.get(one.path)
        yield key, one.path, filling.written if filling else one.text


def longest_texts(lesson: Lesson) -> Mapping[Path, int]:
    """How many signs each text of a translation may have, by its path there."""
    return {key: one.mark.longest for key, one in _keyed(lesson)}


def _keyed(lesson: Lesson) -> Iterator[tuple[Path, LessonText]]:
    """What a translation must bring, by its path there."""
    for one in lesson_texts(lesson.file):
        if one.mark.by_words:
            yield ("foods", one.text), one
        elif one.mark.translated and one.stop is None:
            yield one.path, one
        elif one.mark.translated and one.stop is not None:
            yield ("stops", lesson.stop_id(one.stop), *one.path[3:]), one


def with_texts(file: LessonFile, texts: Mapping[Path, str]) -> LessonFile:
    """The same lesson with other words, by their paths in the lesson file."""
    changed = _replaced(file, (), texts)
    return changed if isinstance(changed, LessonFile) else file


def _walk(value: Frozen, path: Path) -> Iterator[LessonText]:
    for field in marked_fields(type(value)):
        yield from _texts(getattr(value, field.name), (*path, field.key), field.mark)


def _texts(value: object, path: Path, mark: TextMark | None) -> Iterator[LessonText]:
    """The texts in the value of a field."""
    if isinstance(value, str) and mark:
        yield LessonText(path, value, mark)
    elif isinstance(value, Frozen):
        yield from _walk(value, path)
    elif isinstance(value, tuple):
        for inner, entry in _entries(value, path):
            yield from _texts(entry, inner, mark)


def _replaced(value: object, path: Path, texts: Mapping[Path, str]) -> object:
    if isinstance(value, str):
        return texts.get(path, value)
    if isinstance(value, tuple):
        return tuple(_replaced(entry, inner, texts) for inner, entry in _entries(value, path))
    if isinstance(value, Frozen):
        changes = {
            field.name: _replaced(getattr(value, field.name), (*path, field.key), texts)
            for field in marked_fields(type(value))
        }
        return value.model_copy(update=changes)
    return value


def _entries(value: tuple[object, ...], path: Path) -> Iterator[tuple[Path, object]]:
    for index, entry in enumerate(value):
        # what stands in a stop stands below its kind
        yield ((*path, index, entry.kind) if isinstance(entry, BaseStop) else (*path, index)), entry


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
    file = with_texts(lesson.file, texts)
    return replace(lesson, file=file, places=places, language=language, fillings={})
