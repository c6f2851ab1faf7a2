"""The numbers of a text, in digits or in words."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from decimal import Decimal

from generator.language.number import Number
from generator.language.number_words import NumberWords

_TOKEN = re.compile(r"\d+(?:[.,]\d+)*|[^\W\d_]+|[^\w\s\-–]")
"""Digits, words, and each mark by itself; a space or a hyphen parts words and is no token."""
_PART = re.compile(r"[.,](\d{1,2})$")
"""The part of one in a number whose thousands, groups of three digits, are marked."""


def numbers_in(text: str, known: NumberWords) -> tuple[Number, ...]:
    """The numbers of a text in order."""
    if text.isascii() and not known.sign.search(text):
        return ()
    tokens = list(_TOKEN.finditer(text))
    words = [_bare(token[0]) for token in tokens]
    found: list[Number] = []
    at = 0
    while at < len(tokens):
        begins = words[at] in known.begin or words[at][:1].isdigit()
        read = _read(words, at, known) if begins else None
        if read is None:
            at += 1
            continue
        value, used = read
        start, end = tokens[at].start(), tokens[at + used - 1].end()
        in_words = not words[at][:1].isdigit()
        loose = words[at] in known.articles and used <= 2
        found.append(Number(value, start, end, text[start:end], in_words, bare=not loose))
        at += used
    return tuple(found)


def _read(words: Sequence[str], at: int, known: NumberWords) -> tuple[Decimal, int] | None:
    """A number at a token, with the part of one behind it: *and a half*, *point five*."""
    if words[at][:1].isdigit():
        value = _digits(words[at], known)
        used = 1
    else:
        read = known.read(words, at)
        if read is None:
            return None
        value, used = Decimal(read[0]), read[1]
    if value is None:
        return None
    for half in known.half:
        if tuple(words[at + used : at + used + len(half)]) == half:
            return value + Decimal("0.5"), used + len(half)
    tenth = known.read(words, at + used + 1) if words[at + used : at + used + 1] else None
    if tenth and words[at + used] in known.point and tenth[0] < 10:
        return value + Decimal(tenth[0]) / 10, used + 1 + tenth[1]
    return value, used


def _digits(text: str, known: NumberWords) -> Decimal | None:
    if known.thousands.fullmatch(text):
        part = _PART.search(text)
        whole = re.sub(r"[.,]", "", text[: part.start()] if part else text)
        return Decimal(whole + (f".{part[1]}" if part else ""))
    return Decimal(text.replace(",", ".")) if known.plain.fullmatch(text) else None


def _bare(word: str) -> str:
    """In small letters, without accents."""
    if word.isascii():
        return word.lower()
    return "".join(
        c for c in unicodedata.normalize("NFD", word.lower()) if not unicodedata.combining(c)
    )
