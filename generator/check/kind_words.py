"""Words that make food a matter of guilt, or movement its price."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from generator.check.held_texts import HeldText, held_texts, lone_captions
from generator.check.rule import rule, rule_of_words
from generator.compute.result import LessonResult
from generator.language import Language
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
    for at, what, hint, weight in unkind(text.text, text.language):
        place, time = text.spot(at)
        yield Problem(place, time + what, hint, weight)


def unkind(text: str, language: Language) -> Iterator[tuple[int, str, str, Weight]]:
    """Where a text has such words, what they do, what to say instead, and how much it weighs."""
    if not language.unkind_words:
        return
    for found in _any_of(language.unkind_words).finditer(text):
        words = language.unkind_words[int((found.lastgroup or "w0")[1:])]
        about = "makes food a matter of guilt or movement its price"
        what = "speaks of bodies" if words.of_bodies else about
        yield found.start(), f"“{found[0]}” {what}", words.instead, Weight.QUESTION


@cache
def _any_of(unkind: tuple[UnkindWords, ...]) -> re.Pattern[str]:
    """One pattern for all, each in a group that tells its number."""
    groups = (rf"(?P<w{number}>{one.pattern})" for number, one in enumerate(unkind))
    return re.compile(rf"\b(?:{'|'.join(groups)})\b", re.IGNORECASE)
