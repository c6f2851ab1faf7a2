"""A finish code: what a learner did in a lesson as some symbols, and back again.

One number in mixed radix, written in Crockford's base 32. It holds no name, no identifier and no
time of day. ``theme/js/finish-code.js`` does the same on the device; both run on the cases of
``tests/examples/finish-codes.json``.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum, StrEnum

from generator.compute.base32 import Misread, decode, encode
from generator.compute.finish_layout import (
    MARK_BITS,
    MINUTES,
    PARTED,
    SPREAD,
    WHOLE,
    FinishLayout,
)


class Done(IntEnum):
    """Whether a stop is done."""

    NOT = 0
    DONE = 1
    NOT_ASKED = 2
    """A class link left it out."""


class Found(IntEnum):
    """How an answer that counts was found."""

    NOT = 0
    LATER = 1
    FIRST = 2


class Told(IntEnum):
    """What was answered before or after."""

    NOT = 0
    WRONG = 1
    RIGHT = 2


class Unread(StrEnum):
    """Why a code tells nothing."""

    NO_CODE = "no_code"
    """It is none."""
    WRONG_SYMBOL = "wrong_symbol"
    """A symbol is wrong, or two changed places."""
    OTHER_LESSON = "other_lesson"
    """It is of a lesson that is not among these."""
    OTHER_NUMBERS = "other_numbers"
    """It is of the lesson as it was with other numbers."""


@dataclass(frozen=True, slots=True)
class Finished:
    """What a code tells, in the order of its layout."""

    stops: tuple[Done, ...]
    """Which stops are done."""
    answers: tuple[Found, ...]
    """How each answer that counts was found."""
    before: tuple[Told, ...]
    """What was answered to each question that is asked twice, the first time."""
    after: tuple[Told, ...]
    """The same, the second time."""
    step: int
    """Of the minutes that the page was in sight: an index of ``MINUTES``."""

    @property
    def ways(self) -> int:
        """Of each stop in the code."""
        return PARTED if Done.NOT_ASKED in self.stops else WHOLE


def step_of(minutes: float) -> int:
    """The step that whole or broken minutes fall into."""
    return bisect_right(MINUTES, minutes) - 1


def finish_code(finished: Finished, layout: FinishLayout) -> str:
    """The code of what was done.

    Raises:
        ValueError: it does not fit the layout.
    """
    values = (
        layout.lesson,
        layout.numbers,
        finished.step,
        *finished.stops,
        *finished.answers,
        *finished.before,
        *finished.after,
    )
    number = 0
    for value, base in reversed(list(zip(values, layout.bases(finished.ways), strict=True))):
        if not 0 <= value < base:
            raise ValueError(f"{value} is none of {base} values")
        number = number * base + value
    return encode(number * SPREAD, layout.symbols(finished.ways))


def read_code(
    code: str, layouts: Sequence[FinishLayout]
) -> Unread | tuple[tuple[FinishLayout, Finished], ...]:
    """What a code tells, with the layout it fits; with more than one where two lessons have one mark.

    Args:
        code: as it was typed.
        layouts: of the lessons it may be of.
    """
    read = decode(code)
    if read is Misread.NO_SYMBOL:
        return Unread.NO_CODE
    if isinstance(read, Misread) or read[0] % SPREAD:
        return Unread.WRONG_SYMBOL
    number, symbols = read[0] // SPREAD, read[1]
    whole = 2**MARK_BITS
    named = [one for one in layouts if one.lesson == number % whole]
    if not named:
        return Unread.OTHER_LESSON
    same = [one for one in named if one.numbers == number // whole % whole]
    if not same:
        return Unread.OTHER_NUMBERS
    fits = [
        (one, _unpack(number, one, ways))
        for one in same
        for ways in (WHOLE, PARTED)
        if one.symbols(ways) == symbols
    ]
    found = tuple((one, told) for one, told in fits if told)
    return found or Unread.NO_CODE


def _unpack(number: int, layout: FinishLayout, ways: int) -> Finished | None:
    """The values of the places; nothing where they contradict one another."""
    values: list[int] = []
    for base in layout.bases(ways):
        number, value = divmod(number, base)
        values.append(value)
    rest = iter(values[3:])
    finished = Finished(
        stops=tuple(Done(next(rest)) for _ in layout.stops),
        answers=tuple(Found(next(rest)) for _ in layout.answers),
        before=tuple(Told(next(rest)) for _ in layout.twice),
        after=tuple(Told(next(rest)) for _ in layout.twice),
        step=values[2],
    )
    whole = number == 0 and finished.ways == ways
    return finished if whole and _agrees(finished, layout) else None


def _agrees(finished: Finished, layout: FinishLayout) -> bool:
    """Whether what was right after is what was found at first, and nothing was found that was not answered."""
    pairs = zip(finished.after, layout.asked_again, strict=True)
    return all(
        (told is Told.RIGHT) == (finished.answers[at] is Found.FIRST)
        and (told is not Told.NOT or finished.answers[at] is Found.NOT)
        for told, at in pairs
    )
