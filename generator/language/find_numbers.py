"""The numbers of a text, in digits or in words."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator, Sequence
from decimal import Decimal
from fractions import Fraction

from generator.language.amounts import Amount, amount_at
from generator.language.digits import tokens
from generator.language.number import Number
from generator.language.number_words import NumberWords

_BREATH = re.compile(r",\s+")


def numbers_in(text: str, known: NumberWords) -> tuple[Number, ...]:
    """The numbers of a text in order."""
    if text.isascii() and not known.sign.search(text):
        return ()
    of_measures = tuple(_of_measures(text, known))
    found = list(_amounts(text, known))
    if not of_measures:
        return tuple(found)
    apart = [
        number
        for number in found
        if not any(number.start < none.end and none.start < number.end for none in of_measures)
    ]
    return tuple(sorted((*apart, *of_measures), key=lambda number: number.start))


def _amounts(text: str, known: NumberWords) -> Iterator[Number]:
    found = tokens(text, known)
    words = [bare(token[0]) for token in found]
    at = 0
    while at < len(words):
        if words[at] in known.nothing.alone:
            start, end = found[at].span()
            yield Number(Decimal(0), start, end, text[start:end], in_words=True, nothing=True)
            at += 1
        elif amount := _in_one_breath(text, found, words, at, known) or amount_at(words, at, known):
            start, end = found[at].start(), found[at + amount.used - 1].end()
            said, in_words = text[start:end], not words[at][:1].isnumeric()
            value = _decimal(amount.value)
            yield Number(value, start, end, said, in_words, not amount.loose, amount.unit)
            at += amount.used
        else:
            at += 1


def _in_one_breath(
    text: str, found: Sequence[re.Match[str]], words: Sequence[str], at: int, known: NumberWords
) -> Amount | None:
    """*Holds four, twenty.*: a comma where somebody took a breath, and nothing behind it."""
    if words[at + 1 : at + 2] != [","] or not at or words[at - 1] not in known.holds:
        return None
    hundreds = known.read(words[at : at + 1], 0)
    rest = known.read(words, at + 2) if at + 2 < len(words) else None
    if not hundreds or not rest or not (0 < hundreds[0] < 10 <= rest[0] < 100):
        return None
    used = 2 + rest[1]
    ends = at + used == len(words) or words[at + used] in {".", "!"}
    between = text[found[at].end() : found[at + 2].start()]
    if not ends or not _BREATH.fullmatch(between):
        return None
    return Amount(Fraction(hundreds[0] * 100 + rest[0]), used)


def _of_measures(text: str, known: NumberWords) -> Iterator[Number]:
    """*No sodium*, said of what holds it."""
    for found in known.nothing.of.finditer(text):
        named = found["measure"]
        for measure, pattern in known.nothing.measures.items():
            if pattern.fullmatch(named):
                start, end = found.span("said")
                yield Number(
                    Decimal(0),
                    start,
                    end,
                    found["said"],
                    in_words=True,
                    nothing=True,
                    measure=measure,
                )


def _decimal(value: Fraction) -> Decimal:
    return Decimal(value.numerator) / Decimal(value.denominator)


def bare(word: str) -> str:
    """In small letters, without accents."""
    if word.isascii():
        return word.lower()
    return "".join(
        c for c in unicodedata.normalize("NFD", word.lower()) if not unicodedata.combining(c)
    )
