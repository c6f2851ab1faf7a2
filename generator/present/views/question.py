"""A question whose answer is checked by somebody else's program: a learning platform's."""

from __future__ import annotations

from dataclasses import dataclass

from generator.present.views.asked import OptionView


@dataclass(frozen=True, slots=True)
class WrongView:
    """A wrong answer that is likely, and what is said to it."""

    answers: tuple[str, ...]
    """As it may be typed, or the value of the option."""
    says: str


@dataclass(frozen=True, slots=True)
class QuestionView:
    """One question that can be asked away from its page: all it needs stands in it."""

    id: str
    """Name of its answer in the lesson, as in the list of answers that count."""
    title: str
    """What it is called among others."""
    lines: tuple[str, ...]
    """What is known, and what is asked; a paragraph each."""
    options: tuple[OptionView, ...]
    """Nothing where a number is to be written."""
    right: tuple[str, ...]
    """Every way to write the number, or the value of the right option."""
    wrong: tuple[WrongView, ...]
    hint: str
    """The first step; empty where there is none."""
    answer: tuple[str, ...]
    """Working and answer, for afterwards; a paragraph each."""
