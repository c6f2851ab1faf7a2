"""What is asked about the claims of a lesson whose texts are in one language or another."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from generator.check.claims import words_against_numbers
from generator.compute.result import LessonResult
from generator.problems import Problem


def claim_questions(result: LessonResult, tag: str) -> Iterator[Problem]:
    """Questions about claims that the numbers do not bear out; ``tag`` is of BCP 47."""
    yield from words_against_numbers(replace(result, lesson=replace(result.lesson, language=tag)))
