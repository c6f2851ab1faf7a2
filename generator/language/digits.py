"""Numbers in digits: marks between thousands, decimals, and fractions as ``1/2`` and ``½``."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from fractions import Fraction

from generator.language.number_words import NumberWords

_SPACED = r"(?<![\d.,])\d{1,3}(?:[ \u00a0\u202f]\d{3})+(?![\d/]|[.,]\d)"
_OTHERS = r"\d+/\d+|\d+(?:[.,]\d+)*|[¼-¾⅐-⅞]|[^\W\d_]+|[^\w\s\-–]"
_TOKEN, _TOKEN_SPACED = re.compile(_OTHERS), re.compile(rf"{_SPACED}|{_OTHERS}")
_SIGN = re.compile("[¼-¾⅐-⅞]")
_LONGEST = 25
"""Signs of a number that a lesson could be about; Python reads no whole number of 4,301 digits."""
_PART = re.compile(r"[.,](\d{1,2})$")
"""The part of one in a number whose thousands, groups of three digits, are marked."""


def tokens(text: str, known: NumberWords) -> list[re.Match[str]]:
    """Digits, words, and each mark by itself; a space or a hyphen parts words and is no token."""
    return list((_TOKEN_SPACED if known.spaced else _TOKEN).finditer(text))


def digits_at(words: Sequence[str], at: int, known: NumberWords) -> tuple[Fraction, int] | None:
    """A number in digits with the fraction behind it: ``1½``, ``1 1/2``."""
    value = _fraction(words[at]) or _whole(words[at], known)
    if value is None:
        return None
    part = _fraction(words[at + 1]) if value.denominator == 1 and at + 1 < len(words) else None
    return (value + part, 2) if part is not None and part < 1 else (value, 1)


def _fraction(text: str) -> Fraction | None:
    if "/" in text:
        above, _, below = text.partition("/")
        is_one = bool(above and below) and len(text) <= _LONGEST and int(below) > 0
        return Fraction(int(above), int(below)) if is_one else None
    if _SIGN.fullmatch(text):
        return Fraction(unicodedata.numeric(text)).limit_denominator(10)
    return None


def _whole(text: str, known: NumberWords) -> Fraction | None:
    text = re.sub(r"\s", "", text)
    if len(text) > _LONGEST:
        return None
    if known.thousands.fullmatch(text):
        part = _PART.search(text)
        whole = re.sub(r"[.,]", "", text[: part.start()] if part else text)
        return Fraction(whole + (f".{part[1]}" if part else ""))
    return Fraction(text.replace(",", ".")) if known.plain.fullmatch(text) else None
