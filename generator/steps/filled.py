"""Numbers filled into the texts that name them: the one point, before anybody sees a text.

``{lunch.total.gap}`` becomes what the page shows for that number, ``{26}`` is 26 and is not held
against the lesson, ``{{`` is a brace. A lesson is worked out once more with its texts filled, so
that what is checked, shown, spoken and printed is the same text.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from decimal import Decimal

from generator.compute.arithmetic import in_order
from generator.compute.result import Comparison, LessonResult
from generator.compute.work_out import work_out
from generator.language import Language, language_of
from generator.model.figure import FigureKind
from generator.model.filling import Brace, Filled, Filling
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.places import Path
from generator.model.texts import LessonText, lesson_texts, with_texts
from generator.present.words.foreign import like
from generator.present.words.say import Say

_BRACE = re.compile(r"\{\{|\}\}|\{([^{}\n]{0,200})\}")

Write = Callable[[Decimal], str]
"""Writes a number as a page of the language does."""


def worked_out(lesson: Lesson, library: Library) -> LessonResult:
    """Compute a lesson whose names were all found when it was read, and fill its texts."""
    result = work_out(lesson, library)
    every = (one for one in lesson_texts(lesson.file) if one.mark.tells)
    texts = [one for one in every if "{" in one.text or "}}" in one.text]
    if not texts:
        return result
    write = Say(library.words[lesson.language]).number
    filled: dict[Path, str] = {}
    fillings: dict[Path, Filling] = {}
    for one in texts:
        shown, fillings[one.path] = _fill(one, result, write)
        filled[one.path] = like(one.text, shown)
    file = with_texts(lesson.file, filled)
    return work_out(replace(lesson, file=file, fillings=fillings), library)


def _fill(one: LessonText, result: LessonResult, write: Write) -> tuple[str, Filling]:
    """A text with its braces filled, and what became of each."""
    known = _figures(result, one.stop)
    language = language_of(result.lesson.language)
    shown, last = "", 0
    places: list[Filled] = []
    for found in _BRACE.finditer(one.text):
        brace, text = _filled(found, known, language, write)
        shown += one.text[last : found.start()]
        begin, last = len(shown), found.end()
        shown += text
        places.append(Filled(brace, found[1] or "", found.span(), (begin, len(shown))))
    return shown + one.text[last:], Filling(one.text, tuple(places))


def _filled(
    found: re.Match[str], known: Mapping[str, Decimal], language: Language, write: Write
) -> tuple[Brace, str]:
    if found[1] is None:
        return Brace.SIGN, found[0][0]
    inside = found[1].strip()
    if (value := known.get(in_order(inside))) is not None:
        return Brace.FIGURE, write(value)
    numbers = language.numbers_in(inside)
    if len(numbers) == 1 and numbers[0].text == inside:
        return Brace.MEANT, inside
    return Brace.UNKNOWN, found[0]


def _figures(result: LessonResult, stop: int | None) -> Mapping[str, Decimal]:
    """Values by their names, and by what is left of them without the name of the stop meant."""
    figures = [one for one in result.figures if one.kind is not FigureKind.MINUTES]
    known = {one.id: one.value for one in figures}
    for near in _stops_meant(result, stop):
        known |= {one.id.removeprefix(f"{near}."): one.value for one in figures if one.stop == near}
    return known


def _stops_meant(result: LessonResult, stop: int | None) -> Iterator[str]:
    """The stops whose name may be left out in a text, the nearest last."""
    if stop is None:
        if len(result.comparisons) == 1:
            yield from result.comparisons
        return
    own = result.lesson.stop_id(stop)
    worked = result.worked.get(own)
    if worked and isinstance(told := worked.comparison_told, Comparison):
        yield told.stop.id
    yield own
