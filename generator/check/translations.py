"""No text of a translation is missing, and none is older than what it translates."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.model.places import Path
from generator.model.texts import translatable
from generator.model.translation import dotted
from generator.problems import Problem, Weight


@rule
def translations_complete(result: LessonResult) -> Iterator[Problem]:
    """Questions about missing and stale texts, at the place of the original."""
    lesson = result.lesson
    for language, translation in lesson.translations.items():
        for key, path, original in translatable(lesson):
            place = lesson.places.at(*path)
            if key not in translation.texts:
                what = f"{_called(key)} is missing in lesson.{language}.yaml"
                hint = f"translate “{_short(original)}”; until then the page shows it marked"
                yield Problem(place, what, hint, Weight.QUESTION)
            elif translation.is_stale(key, original):
                what = f"{_called(key)} has changed since it was translated to {language}"
                where = translation.places.at(*key)
                hint = f"look at {where}, then write: python3 generator translated {lesson.id} {language}"
                yield Problem(place, what, hint, Weight.QUESTION)


def _called(key: Path) -> str:
    """A text by its key; where it is one of a list, by its number as people count."""
    *keys, last = key
    return (
        f"entry {last + 1} of `{dotted(tuple(keys))}`"
        if isinstance(last, int)
        else f"`{dotted(key)}`"
    )


def _short(text: str) -> str:
    words = " ".join(text.split())
    return words if len(words) <= 60 else words[:57] + "…"
