"""Number words and the marks in numbers, in one language."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from generator.model.measure import Measure

Read = tuple[int, int]
"""The value, and how many tokens it takes."""
Table = Mapping[tuple[str, ...], Fraction]
"""Values of words that stand together; words have no accents."""


@dataclass(frozen=True, slots=True)
class Parts:
    """Parts of one, and words that count by the dozen; all words without accents."""

    before: Table
    """*Half a*: a number before a unit or one of the large words, and nowhere else."""
    behind: Table
    """*And a half*, behind a number or behind its unit."""
    couple: Table
    """*A couple of*: a number before one of the large words only."""
    large: Mapping[str, int]
    """*Dozen*, *hundred*: what the number before it is multiplied by."""
    loose: frozenset[str]
    """Those of them that mostly count other things: *two dozen eggs*, *keep a score*."""
    one: frozenset[str]
    """*A*, before a large word or a unit with a half behind it."""
    alone: Mapping[str, int]
    """Large words that are a number without any before them: *hundred grams*."""
    never_alone: frozenset[str]
    """Words before such a one that make it no number: *several hundred*."""
    units: frozenset[str]
    """Units as single words."""
    of: frozenset[str]
    """*Of*, behind a unit: what there is a part of must then be of a measure."""
    held: frozenset[str]
    """Words for what a unit can be of; *half a teaspoon of salt* is for a cook."""
    goes_on: frozenset[str]
    """Words that may follow a half behind a unit; before another it is half of that one."""


@dataclass(frozen=True, slots=True)
class Nothing:
    """How zero is said without a number."""

    alone: frozenset[str]
    """*Nothing*, *none*."""
    of: re.Pattern[str]
    """None of a measure; the group ``said`` is the number, ``measure`` names what there is none of."""
    measures: Mapping[Measure, re.Pattern[str]]
    """What each measure is called."""


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
    spaced: bool
    """Whether a space may part thousands: ``1 250``."""
    point: frozenset[str]
    """Words for the decimal sign."""
    no_point: frozenset[str]
    """Words before *point* that make it a moment or a place: *at this point*."""
    articles: frozenset[str]
    """Words before hundred or thousand that make it a manner of speaking."""
    holds: frozenset[str]
    """Words of holding; right behind one *four, twenty* is one number with a breath in it."""
    parts: Parts
    """Halves and dozens."""
    nothing: Nothing
    """Zero in other words."""


def sign_of(*words: str) -> re.Pattern[str]:
    """A digit, or one of the words."""
    return re.compile(rf"\d|\b(?:{'|'.join(sorted(words))})\b", re.IGNORECASE)


def table(values: Mapping[str, Fraction]) -> Table:
    """Words that stand together as the reader looks them up."""
    return {tuple(words.split()): value for words, value in values.items()}
