"""Rules over a whole lesson, one in a file, all in one list."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from generator.check.caps import counts_within_caps
from generator.check.claims import words_against_numbers
from generator.check.kind_words import kind_words
from generator.check.plausible_values import plausible_values
from generator.compute.result import LessonResult
from generator.problems import Problem

Rule = Callable[[LessonResult], Iterator[Problem]]

RULES: tuple[Rule, ...] = (
    counts_within_caps,
    plausible_values,
    words_against_numbers,
    kind_words,
)
"""Every rule, in the order of their reports for one place."""


def check_lesson(result: LessonResult) -> Iterator[Problem]:
    """All that the rules have to say of a lesson."""
    for rule in RULES:
        yield from rule(result)
