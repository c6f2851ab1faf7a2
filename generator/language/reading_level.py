"""How hard a text is to read, by the formula of its language."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from collections.abc import Set as AbstractSet
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.rounding import to_places

_SENTENCE = re.compile(r"[^.!?…:;\n]+")
_WORD = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*")
_NAME = re.compile(r"(?<=[\w,] )[A-ZÀ-ÖØ-Þ][^\W\d_]+(?:['’]s\b)?")


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
class Sentence:
    """One sentence of a text, alone."""

    start: int
    """Where it begins in its text."""
    text: str
    """Without the mark that ends it."""
    words: int
    """How many it has."""
    reading: Reading
    """How hard it is by itself."""


@dataclass(frozen=True, slots=True)
class ReadingLevel:
    """The formula of a language."""

    syllables: Callable[[str], int]
    """Syllables of a word."""
    score: Callable[[Counts], Decimal]
    """The published formula."""
    grade: Callable[[Decimal], Decimal]
    """School grade of the United States of a score."""
    taught: AbstractSet[str] = frozenset()
    """Words in small letters that every lesson teaches, and so knows to be long."""

    def reading(self, text: str, known: AbstractSet[str] = frozenset()) -> Reading | None:
        """How hard a text is; nothing for no words.

        Args:
            text: any number of sentences.
            known: words in small letters that a learner knows, such as names: each counts as short.
        """
        short = known | self.taught
        counts = count(text, lambda word: 1 if word.lower() in short else self.syllables(word))
        if not counts.words:
            return None
        score = self.score(counts)
        return Reading(_tenth(score), _tenth(self.grade(score)))

    def sentences(self, text: str, known: AbstractSet[str] = frozenset()) -> Iterator[Sentence]:
        """Each sentence with its own reading, in order; arguments as of ``reading``."""
        for part in _SENTENCE.finditer(text):
            if reading := self.reading(part[0], known):
                start = part.start() + len(part[0]) - len(part[0].lstrip())
                yield Sentence(start, part[0].strip(), len(_WORD.findall(part[0])), reading)

    def hardest(
        self, text: str, number: int = 2, known: AbstractSet[str] = frozenset()
    ) -> tuple[str, ...]:
        """The sentences with the highest grade, hardest first; very short ones tell nothing."""
        graded = {
            one.text: one.reading.grade for one in self.sentences(text, known) if one.words >= 5
        }
        return tuple(sorted(graded, key=lambda sentence: -graded[sentence])[:number])


def count(text: str, syllables: Callable[[str], int]) -> Counts:
    """Words, sentences and syllables of a text; numbers in digits are left out."""
    words = _WORD.findall(text)
    sentences = [part for part in _SENTENCE.findall(text) if _WORD.search(part)]
    return Counts(len(words), len(sentences), sum(map(syllables, words)))


def names_in(text: str) -> frozenset[str]:
    """Words with a capital letter inside of a sentence, in small letters: names of people and places.

    They count as known, as in the formula of Dale and Chall, 1948 (from memory).
    """
    return frozenset(word.lower() for word in _NAME.findall(text))


def _tenth(value: Decimal) -> Decimal:
    return to_places(Fraction(value), 1)
