"""How hard an English text is to read: Flesch-Kincaid."""

from __future__ import annotations

from decimal import Decimal

from generator.language.en.syllables import syllables
from generator.language.reading_level import Counts, ReadingLevel


def grade_level(counts: Counts) -> Decimal:
    """Flesch-Kincaid grade: 0.39 × words/sentence + 11.8 × syllables/word − 15.59.

    Raises:
        ValueError: there is no word or no sentence.
    """
    per_sentence, per_word = counts.ratios
    return Decimal("0.39") * per_sentence + Decimal("11.8") * per_word - Decimal("15.59")


_TAUGHT = frozenset(
    {"calcium", "difference", "energy", "kilocalories", "potassium", "saturated", "sodium"}
    | {"subtract", "vitamin"}
)
"""What is compared and worked out in every lesson; the page says what each is."""

READING_LEVEL = ReadingLevel(
    syllables, score=grade_level, grade=lambda score: score, taught=_TAUGHT
)
