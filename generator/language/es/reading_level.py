"""How hard a Spanish text is to read: Szigriszt-Pazos."""

from __future__ import annotations

from decimal import Decimal

from generator.language.es.syllables import syllables
from generator.language.reading_level import Counts, ReadingLevel


def perspicuity(counts: Counts) -> Decimal:
    """Szigriszt-Pazos (1993), the INFLESZ score: 206.835 − 62.3 × syllables/word − words/sentence."""
    per_sentence, per_word = counts.ratios
    return Decimal("206.835") - Decimal("62.3") * per_word - per_sentence


def grade_of_perspicuity(score: Decimal) -> Decimal:
    """Szigriszt's scale of ages, as grades: 86-100 about 6 to 10 years, 76-85 about 11, 66-75 about 12.

    A grade is about the age less 5 or 6 years (common practice, no source).
    """
    for least, grade in ((86, 4), (76, 5), (66, 6), (50, 9)):
        if score >= least:
            return Decimal(grade)
    return Decimal(12)


_TAUGHT = frozenset(
    {"calcio", "centenas", "conteo", "decenas", "diferencia", "energía", "kilocalorías"}
    | {"movimientos", "potasio", "saturada", "sodio", "vitamina"}
)
"""What is compared and worked out in every lesson; the page says what each is."""

READING_LEVEL = ReadingLevel(
    syllables, score=perspicuity, grade=grade_of_perspicuity, taught=_TAUGHT
)
