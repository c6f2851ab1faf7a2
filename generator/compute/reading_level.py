"""How hard a text is to read: Flesch-Kincaid in English, Szigriszt-Pazos in Spanish."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal

from generator.compute.syllables import english_syllables, spanish_syllables

_SENTENCE = re.compile(r"[^.!?…:;\n]+")
_WORD = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*")


@dataclass(frozen=True, slots=True)
class Counts:
    """What a text is made of."""

    words: int
    sentences: int
    syllables: int


@dataclass(frozen=True, slots=True)
class Reading:
    """How hard a text is, in the measure of its language."""

    score: Decimal
    """Flesch-Kincaid grade, or Szigriszt-Pazos perspicuity; to a tenth."""
    grade: Decimal
    """School grade of the United States the score stands for, to a tenth."""


def grade_level(counts: Counts) -> Decimal:
    """Flesch-Kincaid grade: 0.39 × words/sentence + 11.8 × syllables/word − 15.59.

    Raises:
        ValueError: there is no word or no sentence.
    """
    per_sentence, per_word = _ratios(counts)
    return Decimal("0.39") * per_sentence + Decimal("11.8") * per_word - Decimal("15.59")


def perspicuity(counts: Counts) -> Decimal:
    """Szigriszt-Pazos (1993), the INFLESZ score: 206.835 − 62.3 × syllables/word − words/sentence."""
    per_sentence, per_word = _ratios(counts)
    return Decimal("206.835") - Decimal("62.3") * per_word - per_sentence


def reading(text: str, language: str) -> Reading | None:
    """How hard a text is; nothing for no words or a language without a formula here."""
    counter = _COUNTERS.get(language.partition("-")[0])
    counts = count(text, counter) if counter else None
    if counts is None or not counts.words:
        return None
    if language.startswith("es"):
        score = perspicuity(counts)
        return Reading(_tenth(score), _grade_of_perspicuity(score))
    return Reading(_tenth(grade_level(counts)), _tenth(grade_level(counts)))


def hardest(text: str, language: str, number: int = 2) -> tuple[str, ...]:
    """The sentences with the highest grade, hardest first; very short ones tell nothing."""
    sentences = [part.strip() for part in _SENTENCE.findall(text)]
    graded = [
        (found.grade, sentence)
        for sentence in dict.fromkeys(sentences)
        if len(_WORD.findall(sentence)) >= 5 and (found := reading(sentence, language))
    ]
    return tuple(sentence for _, sentence in sorted(graded, key=lambda one: -one[0])[:number])


def count(text: str, syllables: Callable[[str], int]) -> Counts:
    """Words, sentences and syllables of a text; numbers in digits are left out."""
    words = _WORD.findall(text)
    sentences = [part for part in _SENTENCE.findall(text) if _WORD.search(part)]
    return Counts(len(words), len(sentences), sum(map(syllables, words)))


_COUNTERS: dict[str, Callable[[str], int]] = {"en": english_syllables, "es": spanish_syllables}


def _grade_of_perspicuity(score: Decimal) -> Decimal:
    """Szigriszt's scale of ages, as grades: 86-100 about 6 to 10 years, 76-85 about 11, 66-75 about 12.

    A grade is about the age less 5 or 6 years (common practice, no source).
    """
    for least, grade in ((86, 4), (76, 5), (66, 6), (50, 9)):
        if score >= least:
            return Decimal(grade)
    return Decimal(12)


def _ratios(counts: Counts) -> tuple[Decimal, Decimal]:
    if counts.words < 1 or counts.sentences < 1:
        raise ValueError("a text without words has no reading level")
    words = Decimal(counts.words)
    return words / counts.sentences, counts.syllables / words


def _tenth(value: Decimal) -> Decimal:
    return round(value, 1)
