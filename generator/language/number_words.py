"""Number words and the marks in numbers, in one language."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass

Read = tuple[int, int]
"""The value, and how many tokens it takes."""


@dataclass(frozen=True, slots=True)
class NumberWords:
    """What the reader of numbers has to know of a language."""

    read: Callable[[Sequence[str], int], Read | None]
    """The number that begins at a word, with how many words it takes; nothing where none does."""
    begin: frozenset[str]
    """Words a number can begin with, without accents."""
    sign: re.Pattern[str]
    """What every plain text with a number has somewhere; most sentences have none."""
    thousands: re.Pattern[str]
    """Digits with marks between the thousands."""
    plain: re.Pattern[str]
    """Digits without; a fraction of one or two places may follow."""
    point: frozenset[str]
    """Words for the decimal sign."""
    half: tuple[tuple[str, ...], ...]
    """*And a half* as tokens."""
    articles: frozenset[str]
    """Words before hundred or thousand that make it a manner of speaking."""


def sign_of(*words: str) -> re.Pattern[str]:
    """A digit, or one of the words."""
    return re.compile(rf"\d|\b(?:{'|'.join(sorted(words))})\b", re.IGNORECASE)
