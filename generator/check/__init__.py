"""Rules over a whole lesson, one in a file, all in one list."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from generator.check.caps import counts_within_caps
from generator.check.captions import CAPTION_RULES, CAPTION_WORD_RULES
from generator.check.claims import words_against_numbers
from generator.check.kind_words import kind_words
from generator.check.plausible_values import plausible_values
from generator.check.reading import easy_to_read
from generator.check.recorded import numbers_as_filmed
from generator.check.spoken_numbers import spoken_numbers, untranslated_numbers
from generator.check.translations import translations_complete
from generator.compute.result import LessonResult
from generator.problems import Problem

Rule = Callable[[LessonResult], Iterator[Problem]]

RULES: tuple[Rule, ...] = (
    counts_within_caps,
    plausible_values,
    words_against_numbers,
    kind_words,
    easy_to_read,
    translations_complete,
    numbers_as_filmed,
    *CAPTION_RULES,
    *CAPTION_WORD_RULES,
    spoken_numbers,
    untranslated_numbers,
)
"""Every rule, in the order of their reports for one place."""


IN_EVERY_LANGUAGE: tuple[Rule, ...] = (
    words_against_numbers,
    kind_words,
    easy_to_read,
    *CAPTION_WORD_RULES,
    spoken_numbers,
)
"""Rules about words, asked of each translation too."""


def check_words(result: LessonResult) -> Iterator[Problem]:
    """What the rules about words have to say of a lesson in another language."""
    for rule in IN_EVERY_LANGUAGE:
        yield from rule(result)


def check_lesson(result: LessonResult) -> Iterator[Problem]:
    """All that the rules have to say of a lesson."""
    for rule in RULES:
        yield from rule(result)
