"""The words around a number that tell what it counts."""

from __future__ import annotations

import re
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class AroundNumbers:
    """Patterns of one language; all ignore case.

    Those called *before* are searched in the text that ends where the number begins, those called
    *after* are matched against the text that begins where it ends.
    """

    labels_before: re.Pattern[str]
    """Row, step, page, grade: the number is a name."""
    ordinal_after: re.Pattern[str]
    """The ending of *2nd*, *3.º*."""
    time_before: re.Pattern[str]
    """At, until: with a small number, an hour."""
    clock_before: re.Pattern[str]
    """At, until: with hours and minutes said one behind the other, a time: *at two ten*."""
    time_after: re.Pattern[str]
    """Minutes, years, years old, o'clock."""
    month_before: re.Pattern[str]
    """*May 4*; heeds capitals where the language does: *march* is a move too."""
    month_after: re.Pattern[str]
    """*4 May*, *4 de mayo*."""
    year_before: re.Pattern[str]
    """In, since: with a number from 1900 to 2099, a year."""
    fraction_after: re.Pattern[str]
    """Halves, thirds, percent: the number is a part."""
    multiple_after: re.Pattern[str]
    """Times as much: a claim, and not a number of the lesson."""
    repeats_after: re.Pattern[str]
    """Times: behind *a hundred* it means *very often*."""
    given_after: re.Pattern[str]
    """For the: at the beginning of a clause the number is given to a food."""
    begins: re.Pattern[str]
    """The beginning of a clause."""
    unit_after: re.Pattern[str]
    """Units of the measures, counts and place values: the number is of the lesson."""
    follows: frozenset[str]
    """Small words that may follow a number of the lesson; any other word is something it counts."""
    of_after: re.Pattern[str]
    """One *of* them."""
    holds_before: re.Pattern[str]
    """The food holds: the number is what it holds."""
    listed: re.Pattern[str]
    """One food holds so much, and the next: *the bun holds ninety, the pie* a dozen."""
    sum_words: re.Pattern[str]
    """Words of a calculation: then the number may be any of the lesson."""
    more_after: re.Pattern[str]
    """More, less: the number is a gap."""
    carries_on: re.Pattern[str]
    """How a sentence begins that still speaks of the food before it."""
    joined: re.Pattern[str]
    """All that may stand between two numbers that belong together: *one and two*."""
    aloud: re.Pattern[str]
    """All that may stand between numbers that are counted aloud: *one, two, and three*."""


def words(*some: str) -> re.Pattern[str]:
    """Any of these, as whole words, whatever their case."""
    return re.compile(rf"\b(?:{'|'.join(some)})\b", re.IGNORECASE)


def joining(*some: str) -> re.Pattern[str]:
    """Nothing but a mark, one of these words, or both."""
    return re.compile(rf"\s*(?:,|-|–|(?:,\s*)?(?:{'|'.join(some)}))\s*")


def counting(*some: str) -> re.Pattern[str]:
    """Nothing but marks and at most one of these words."""
    return re.compile(rf"[\s,.…;:!-]*(?:{'|'.join(some)})?[\s,.…;:!-]*")


def before(*some: str, between: str = "") -> re.Pattern[str]:
    """Any of these right before the number, with nothing but ``between`` after it."""
    return re.compile(rf"\b(?:{'|'.join(some)})\s+{between}$", re.IGNORECASE)


def after(*some: str) -> re.Pattern[str]:
    """Any of these right behind the number."""
    return re.compile(rf"\s*-?\s*(?:{'|'.join(some)})(?!\w)", re.IGNORECASE)
