"""What a language has to bring, so that texts in it can be checked."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

from generator.language.around_numbers import AroundNumbers
from generator.language.find_numbers import numbers_in
from generator.language.grammar import Grammar
from generator.language.kind_words import UnkindWords
from generator.language.number import Number
from generator.language.number_words import NumberWords
from generator.language.phrases import Phrases
from generator.language.reading_level import ReadingLevel
from generator.language.said_of import SaidOf


@dataclass(frozen=True, slots=True, eq=False)  # one of each: told apart by which it is
class Language:
    """Everything that differs by language; each part is a file of the language's folder."""

    tag: str
    """Language tag of BCP 47, without a region."""
    number_words: NumberWords
    """How numbers are said."""
    around: AroundNumbers
    """Words around a number that tell what it counts."""
    said_of: SaidOf
    """Words beside a number that tell what of a lesson it is said of."""
    claims: Grammar
    """How something is claimed about two numbers."""
    phrases: Phrases
    """How it is put right."""
    unkind_words: tuple[UnkindWords, ...]
    """Words of guilt and payment, and what to say instead."""
    reading_level: ReadingLevel | None
    """Nothing where no formula is known."""
    spelled: Callable[[Decimal], str] | None = None
    """A number in words, in the one form in which a film says it; nothing where none is known."""

    @property
    def unchecked(self) -> tuple[str, ...]:
        """What cannot be checked in it, in words; nothing for a language with a whole folder."""
        known = {
            "claims about numbers": bool(self.claims.claims),
            "numbers in words": bool(self.number_words.begin),
            "words of guilt and payment": bool(self.unkind_words),
            "the reading level": self.reading_level is not None,
        }
        return tuple(what for what, is_known in known.items() if not is_known)

    def numbers_in(self, text: str) -> tuple[Number, ...]:
        """The numbers of a text in order, in words or digits."""
        return _numbers_in(self, text)


@lru_cache(maxsize=256)  # about one lesson: the next has other words
def _numbers_in(language: Language, text: str) -> tuple[Number, ...]:
    """Read once, however many rules ask of the same words."""
    return numbers_in(text, language.number_words)
