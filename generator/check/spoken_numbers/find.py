"""The numbers of a text, in digits or in words, English or Spanish."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal

from generator.check.spoken_numbers.english_words import BEGIN as ENGLISH_BEGIN
from generator.check.spoken_numbers.english_words import read_english
from generator.check.spoken_numbers.number import Number
from generator.check.spoken_numbers.spanish_words import BEGIN as SPANISH_BEGIN
from generator.check.spoken_numbers.spanish_words import read_spanish

_TOKEN = re.compile(r"\d+(?:[.,]\d+)*|[^\W\d_]+|[^\w\s\-–]")
"""Digits, words, and each mark by itself; a space or a hyphen parts words and is no token."""


@dataclass(frozen=True, slots=True)
class _Tongue:
    read: Callable[[Sequence[str], int], tuple[int, int] | None]
    begin: frozenset[str]
    """Words a number can begin with, without accents."""
    sign: re.Pattern[str]
    """What every plain text with a number has somewhere; most sentences have none."""
    thousands: re.Pattern[str]
    """Digits with marks between the thousands."""
    plain: re.Pattern[str]
    """Digits without; a fraction of one or two places may follow."""
    point: frozenset[str]
    half: tuple[tuple[str, ...], ...]
    """*And a half* as tokens."""
    articles: frozenset[str]
    """Words before hundred or thousand that make it a manner of speaking."""


def _sign(*words: str) -> re.Pattern[str]:
    return re.compile(rf"\d|\b(?:{'|'.join(sorted(words))})\b", re.IGNORECASE)


_TONGUES: Mapping[str, _Tongue] = {
    "en": _Tongue(
        read_english,
        ENGLISH_BEGIN,
        _sign(*(ENGLISH_BEGIN - {"a"}), "hundred", "thousand"),
        re.compile(r"\d{1,3}(?:,\d{3})+(?:\.\d{1,2})?"),
        re.compile(r"\d+(?:\.\d{1,2})?"),
        frozenset({"point"}),
        (("and", "a", "half"),),
        frozenset({"a"}),
    ),
    # In Spanish both marks are in use: 1.200 in Spain, 1,200 in Mexico and in the United States.
    "es": _Tongue(
        read_spanish,
        SPANISH_BEGIN,
        _sign(*SPANISH_BEGIN),
        re.compile(r"\d{1,3}(?:[.,]\d{3})+"),
        re.compile(r"\d+(?:[.,]\d{1,2})?"),
        frozenset({"punto", "coma"}),
        (("y", "medio"), ("y", "media")),
        frozenset({"mil", "cien"}),
    ),
}


def numbers_in(text: str, language: str) -> tuple[Number, ...]:
    """The numbers of a text in order; none in a language whose words are not known here.

    Args:
        text: a sentence or more.
        language: tag of BCP 47; its region is of no matter.
    """
    tongue = _TONGUES.get(language.partition("-")[0])
    if tongue is None or (text.isascii() and not tongue.sign.search(text)):
        return ()
    tokens = list(_TOKEN.finditer(text))
    words = [_bare(token[0]) for token in tokens]
    found: list[Number] = []
    at = 0
    while at < len(tokens):
        begins = words[at] in tongue.begin or words[at][0].isdigit()
        read = _read(words, at, tongue) if begins else None
        if read is None:
            at += 1
            continue
        value, used = read
        start, end = tokens[at].start(), tokens[at + used - 1].end()
        in_words = not words[at][0].isdigit()
        loose = words[at] in tongue.articles and used <= 2
        found.append(Number(value, start, end, text[start:end], in_words, bare=not loose))
        at += used
    return tuple(found)


def _read(words: Sequence[str], at: int, tongue: _Tongue) -> tuple[Decimal, int] | None:
    """A number at a token, with the part of one behind it: *and a half*, *point five*."""
    if words[at][0].isdigit():
        value = _digits(words[at], tongue)
        used = 1
    else:
        read = tongue.read(words, at)
        if read is None:
            return None
        value, used = Decimal(read[0]), read[1]
    if value is None:
        return None
    for half in tongue.half:
        if tuple(words[at + used : at + used + len(half)]) == half:
            return value + Decimal("0.5"), used + len(half)
    tenth = tongue.read(words, at + used + 1) if words[at + used : at + used + 1] else None
    if tenth and words[at + used] in tongue.point and tenth[0] < 10:
        return value + Decimal(tenth[0]) / 10, used + 1 + tenth[1]
    return value, used


def _digits(text: str, tongue: _Tongue) -> Decimal | None:
    if tongue.thousands.fullmatch(text):
        whole, point, rest = text.partition("." if tongue.point == {"point"} else "\0")
        return Decimal(re.sub(r"[.,]", "", whole) + point + rest)
    return Decimal(text.replace(",", ".")) if tongue.plain.fullmatch(text) else None


def _bare(word: str) -> str:
    """In small letters, without accents."""
    if word.isascii():
        return word.lower()
    return "".join(
        c for c in unicodedata.normalize("NFD", word.lower()) if not unicodedata.combining(c)
    )
