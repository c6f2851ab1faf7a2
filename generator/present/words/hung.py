"""Gaps that hang as plums, in words: what a cover shows to whoever does not see it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from fractions import Fraction

from generator.present.pictures.plums.hung import Hung
from generator.present.words.families import GAPS, WHICH_GAP
from generator.present.words.say import Say


def hung_in_words(shares: Sequence[float | Fraction], say: Say) -> str:
    """``Three gaps, the first the longest.``; empty where nothing hangs. It says no number of a lesson.

    Args:
        shares: how long each thread is, 1 for the longest.
        say: the words of the page.
    """
    if not shares:
        return ""
    return say("hung", told=", ".join(_told(shares, say)))


def numbers_in_words(rows: Sequence[Hung], say: Say) -> str:
    """The same with every gap and the side that holds more, in order."""
    numbers = tuple(
        say("hung_number", gap=say.number(row.gap), side=row.holder)
        if row.holder
        else say.number(row.gap)
        for row in rows
    )
    told = ", ".join(_told(tuple(row.share for row in rows), say))
    return say("hung_numbers", told=told, numbers=say.listed(numbers))


def _told(shares: Sequence[float | Fraction], say: Say) -> Iterator[str]:
    count = str(len(shares))
    yield say(GAPS.key(count)) if count in GAPS.members else say("gaps_many", n=len(shares))
    longest = [at for at, share in enumerate(shares) if share == 1]
    closed = [at for at, share in enumerate(shares) if share == 0]
    if len(shares) == len(closed):
        yield say("hung_all_closed")
    elif len(shares) == len(longest) > 1:
        yield say("hung_all_as_long")
    elif len(shares) > 1:
        yield say("hung_longest", which=_listed(longest, say))
        if closed:
            yield say("hung_closed", which=_listed(closed, say))


def _listed(places: Sequence[int], say: Say) -> str:
    return say.listed(tuple(_which(at, say) for at in places))


def _which(at: int, say: Say) -> str:
    """``the first``, by a place counted from 0."""
    number = str(at + 1)
    if number in WHICH_GAP.members:
        return say(WHICH_GAP.key(number))
    return say("which_gap_many", number=say.number(Decimal(number)))
