"""What a rule is: a question asked of a whole lesson, once, or of its words in every language."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from generator.compute.result import LessonResult
from generator.problems import Problem

Ask = Callable[[LessonResult], Iterator[Problem]]


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule; call it with a lesson for all that it has to say."""

    ask: Ask
    """Everything that is wrong with a lesson, by this rule."""
    of_words: bool
    """Whether it is about words, and so asked of each translation too."""

    @property
    def name(self) -> str:
        """Name of the function it is made of."""
        return self.ask.__name__

    def __call__(self, result: LessonResult) -> Iterator[Problem]:
        """All that it has to say of a lesson."""
        return self.ask(result)


def rule(ask: Ask) -> Rule:
    """A rule that looks at numbers, times or files: the same in every language, asked once."""
    return Rule(ask, of_words=False)


def rule_of_words(ask: Ask) -> Rule:
    """A rule that looks at words: asked of the lesson and of each of its translations."""
    return Rule(ask, of_words=True)
