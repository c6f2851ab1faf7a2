"""Words that make food a matter of guilt, or movement its price."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from generator.check.held_texts import HeldText, held_texts, lone_captions
from generator.check.rule import rule, rule_of_words
from generator.compute.result import LessonResult
from generator.language.kind_words import UnkindWords
from generator.problems import Problem, Weight


@rule_of_words
def kind_words(result: LessonResult) -> Iterator[Problem]:
    """Questions about wording, each with another way to say it."""
    for text in held_texts(result):
        yield from _questions(text)


@rule
def kind_captions(result: LessonResult) -> Iterator[Problem]:
    """The same for captions in a language that the lesson has no translation for."""
    for text in lone_captions(result):
        yield from _questions(text)


def _questions(text: HeldText) -> Iterator[Problem]:
    unkind = text.language.unkind_words
    if not unkind:
        return
    for found in _any_of(unkind).finditer(text.text):
        words = unkind[int((found.lastgroup or "w0")[1:])]
        about = "makes food a matter of guilt or movement its price"
        what = "speaks of bodies" if words.of_bodies else about
        place, time = text.spot(found.start())
        yield Problem(place, f"{time}“{found[0]}” {what}", words.instead, Weight.QUESTION)


@cache
def _any_of(unkind: tuple[UnkindWords, ...]) -> re.Pattern[str]:
    """One pattern for all, each in a group that tells its number."""
    groups = (rf"(?P<w{number}>{one.pattern})" for number, one in enumerate(unkind))
    return re.compile(rf"\b(?:{'|'.join(groups)})\b", re.IGNORECASE)
