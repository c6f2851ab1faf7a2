"""Words that make food a matter of guilt, or movement its price."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from generator.check.rule import rule_of_words
from generator.check.texts import place_inside
from generator.compute.result import LessonResult
from generator.language import language_of
from generator.language.kind_words import UnkindWords
from generator.model.texts import lesson_texts
from generator.problems import Problem, Weight


@rule_of_words
def kind_words(result: LessonResult) -> Iterator[Problem]:
    """Questions about wording, each with another way to say it."""
    unkind = language_of(result.lesson.language).unkind_words
    if not unkind:
        return
    pattern = _any_of(unkind)
    for one in lesson_texts(result.lesson.file):
        place = result.lesson.places.at(*one.path)
        for found in pattern.finditer(one.text):
            words = unkind[int((found.lastgroup or "w0")[1:])]
            about = "makes food a matter of guilt or movement its price"
            what = "speaks of bodies" if words.of_bodies else about
            where = place_inside(result.lesson, place, one.text, found.start())
            yield Problem(where, f"“{found[0]}” {what}", words.instead, Weight.QUESTION)


@cache
def _any_of(unkind: tuple[UnkindWords, ...]) -> re.Pattern[str]:
    """One pattern for all, each in a group that tells its number."""
    groups = (rf"(?P<w{number}>{one.pattern})" for number, one in enumerate(unkind))
    return re.compile(rf"\b(?:{'|'.join(groups)})\b", re.IGNORECASE)
