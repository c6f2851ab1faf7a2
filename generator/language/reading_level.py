"""How hard a text is to read, by the formula of its language."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.rounding import to_places

_SENTENCE = re.compile(r"[^.!?…:;\n]+")
_WORD = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*")


@dataclass(frozen=True, slots=True)
class Counts:
    """What a text is made of."""

    words: int
    """At least one."""
    sentences: int
    """At least one."""
    syllables: int
    """Of all words."""

    @property
    def ratios(self) -> tuple[Decimal, Decimal]:
        """Words a sentence and syllables a word.

        Raises:
            ValueError: there is no word or no sentence.
        """
        if self.words < 1 or self.sentences < 1:
            raise ValueError("a text without words has no reading level")
        words = Decimal(self.words)
        return words / self.sentences, self.syllables / words


@dataclass(frozen=True, slots=True)
class Reading:
    """How hard a text is, in the measure of its language."""

    score: Decimal
    """Flesch-Kincaid grade, or Szigriszt-Pazos perspicuity; to a tenth."""
    grade: Decimal
    """School grade of the United States the score stands for, to a tenth."""


@dataclass(frozen=True, slots=True)
class ReadingLevel:
    """The formula of a language."""

    syllables: Callable[[str], int]
    """Syllables of a word."""
    score: Callable[[Counts], Decimal]
    """The published formula."""
    grade: Callable[[Decimal], Decimal]
    """School grade of the United States of a score."""

    def reading(self, text: str) -> Reading | None:
        """How hard a text is; nothing for no words."""
        counts = count(text, self.syllables)
        if not counts.words:
            return None
        score = self.score(counts)
        return Reading(_tenth(score), _tenth(self.grade(score)))

    def hardest(self, text: str, number: int = 2) -> tuple[str, ...]:
        """The sentences with the highest grade, hardest first; very short ones tell nothing."""
        sentences = [part.strip() for part in _SENTENCE.findall(text)]
        graded = [
            (found.grade, sentence)
            for sentence in dict.fromkeys(sentences)
            if len(_WORD.findall(sentence)) >= 5 and (found := self.reading(sentence))
        ]
        return tuple(sentence for _, sentence in sorted(graded, key=lambda one: -one[0])[:number])


def count(text: str, syllables: Callable[[str], int]) -> Counts:
    """Words, sentences and syllables of a text; numbers in digits are left out."""
    words = _WORD.findall(text)
    sentences = [part for part in _SENTENCE.findall(text) if _WORD.search(part)]
    return Counts(len(words), len(sentences), sum(map(syllables, words)))


def _tenth(value: Decimal) -> Decimal:
    return to_places(Fraction(value), 1)
