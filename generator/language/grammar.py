"""What the reader of claims has to know of a language."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from generator.language.find_numbers import numbers_in
from generator.language.form import Form, Leeway
from generator.language.number_words import NumberWords
from generator.model.measure import Measure


@dataclass(frozen=True, slots=True)
class Kind:
    """One way to claim something."""

    form: Form
    """What is claimed."""
    signs: tuple[str, ...]
    """Without one of these, in small letters, the pattern is not worth trying."""
    pattern: re.Pattern[str]
    """May hold the groups ``leeway``, ``n`` (a number or share in words or digits) and ``less``;
    and ``claim``, where only a part of it is the claim and the rest stands around it."""
    both: bool = False
    """Whether it is a claim only where two foods or sides are named: *beats*, *is worth*."""


@dataclass(frozen=True, slots=True, eq=False)  # one of each: told apart by which it is
class Grammar:
    """Patterns and words of one language; all patterns ignore case.

    A claim's pattern names the words that make it a claim about amounts of food, so that *twice
    a week*, *half an apple* or *el doble de una tela* match none.
    """

    claims: tuple[Kind, ...]
    """Tried in order; a stretch of text read by one is not read again by the next."""
    numbers: Mapping[str, Fraction]
    """Multiples, shares and ordinals in words."""
    leeways: tuple[tuple[Leeway, re.Pattern[str]], ...]
    """About, almost, over: how exactly a number is meant; the first that is found counts."""
    measures: Mapping[Measure, re.Pattern[str]]
    """What each measure is called."""
    doubt: re.Pattern[str]
    """Words before a claim that take it back: not, if, never."""
    denial: re.Pattern[str]
    """Words right before a claim that turn it round, in their groups *not even*: does not."""
    reported: re.Pattern[str]
    """Words anywhere in a sentence that make it somebody else's: nobody said, she thinks."""
    supposed: re.Pattern[str]
    """Words before a number that is only thought of: suppose, what if, somebody said."""
    states: re.Pattern[str]
    """Words of holding and being; without one a claim that names nothing is of something else."""
    telling: re.Pattern[str]
    """How a question begins that takes its claim for true: why, how come."""
    rows: re.Pattern[str]
    """A row called by its number."""
    row: re.Pattern[str]
    """The word row, whichever."""
    last: re.Pattern[str]
    """The last row."""
    total: re.Pattern[str]
    """Words for all rows together."""
    gap: re.Pattern[str]
    """What a gap is called."""
    together: re.Pattern[str]
    """Words that add foods up."""
    counted: re.Pattern[str]
    """A number of portions right before a food, in the group ``n``: *two apples*."""
    percent: re.Pattern[str]
    """The sign or the words behind a number that make it hundredths."""
    said: NumberWords
    """How numbers are said."""
    amounts: re.Pattern[str]
    """A number of household units, in the group ``n``."""
    clauses: re.Pattern[str]
    """What parts a sentence into clauses."""
    plain: frozenset[str]
    """Words that name no food and no side."""
    times_word: str
    """The word behind a number that makes a multiple of it: *times*."""

    def number(self, text: str) -> Fraction | None:
        """A number in words or digits."""
        words = " ".join(text.lower().split())
        if percent := self.percent.search(words):
            hundredths = self.number(words[: percent.start()])
            return None if hundredths is None else hundredths / 100
        words = words.removesuffix(f" {self.times_word}")
        if words in self.numbers:
            return self.numbers[words]
        digits = plain_digits(words)
        if re.fullmatch(r"\d{1,20}(\.\d{1,20})?", digits):
            return Fraction(digits)
        found = numbers_in(words, self.said)
        return Fraction(found[0].value) if len(found) == 1 and found[0].text == words else None

    def leeway(self, text: str | None) -> Leeway:
        """The leeway a phrase gives itself."""
        for leeway, pattern in self.leeways:
            if text and pattern.search(text):
                return leeway
        return Leeway.PLAIN


def plain_digits(text: str) -> str:
    """Digits and at most a point, whichever mark parts thousands: ``1,420`` and ``1.420`` are one number.

    A language does not settle it: in Spanish the United States and Mexico write 1,420.5 and Spain
    1420,5 (Unicode CLDR). A mark before exactly three digits parts thousands; no label has three decimals.
    """
    return re.sub(r"[.,](?=\d{3}(?:[.,]|$))", "", text).replace(",", ".")


def words(*patterns: str) -> re.Pattern[str]:
    """Whole words, whatever their case."""
    return re.compile(rf"\b(?:{'|'.join(patterns)})\b", re.IGNORECASE)


def signs_in(text: str, grammar: Grammar) -> frozenset[str]:
    """The signs of claims that stand in a text, each looked for once for all kinds that share it."""
    small = text.lower()
    return frozenset(sign for sign in _signs(grammar) if sign in small)


@lru_cache(maxsize=16)
def _signs(grammar: Grammar) -> frozenset[str]:
    return frozenset(sign for kind in grammar.claims for sign in kind.signs)
