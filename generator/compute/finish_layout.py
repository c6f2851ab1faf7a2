"""What a finish code of a lesson tells, and in which order: made of the lesson, and kept beside its pages."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from hashlib import sha256
from itertools import islice, product
from math import prod

from generator.compute.counted_answers import (
    AskedTwice,
    answers_that_count,
    asked_twice,
    stops_of,
)
from generator.compute.result import LessonResult

MARK_BITS = 12
"""Of the mark of a lesson, and of that of its numbers."""
MINUTES = (0, 5, 10, 15, 20, 30, 45, 60)
"""Where each step of the minutes begins; the last one has no end."""
SPREAD = 33
"""Every code is a multiple of it. With 37 of the check symbol it makes 1,221, more than any change of
two neighboring symbols can come to (1,023), and no one symbol comes to 33: so every such change is
noticed, and not only two that changed places."""
WHOLE, PARTED = 2, 3
"""Ways of a stop in a code: done or not; and, where a class link left some out, not asked."""
_SYMBOLS = 32
_MOST_CHOICES = 256
"""Of older names of stops: eight stops that had one other name each, and any of them changed by itself."""


@dataclass(frozen=True, slots=True)
class FinishLayout:
    """The places of a finish code."""

    lesson: int
    """Mark of the lesson's id, 12 bits."""
    numbers: int
    """Mark of its stops, and of the names and values of its answers that count, 12 bits; not of its words."""
    stops: tuple[str, ...]
    """Ids, in the order of the page; two ways each, or three."""
    answers: tuple[str, ...]
    """Names of the answers that count, in that order; three ways each."""
    twice: tuple[AskedTwice, ...]
    """Questions asked before and after, in the order in which they are asked again; three ways each time."""

    def bases(self, ways: int) -> tuple[int, ...]:
        """How many values each place may have, the first one counting least.

        Args:
            ways: of each stop, ``WHOLE`` or ``PARTED``.
        """
        mark, pairs = 2**MARK_BITS, (3,) * len(self.twice)
        stops, answers = (ways,) * len(self.stops), (3,) * len(self.answers)
        return (mark, mark, len(MINUTES), *stops, *answers, *pairs, *pairs)

    def symbols(self, ways: int) -> int:
        """How many symbols a code has without its check symbol.

        Where a class link left stops out it has more, and is known by that; so every code of a
        whole lesson keeps meaning what it meant.
        """
        most, length = prod(self.bases(ways)) * SPREAD - 1, 1
        if ways != WHOLE:
            length = self.symbols(WHOLE) + 1
        while most >= _SYMBOLS**length:
            length += 1
        return length

    @property
    def asked_again(self) -> tuple[int, ...]:
        """Of each question asked twice, which of the answers is the second one."""
        return tuple(self.answers.index(f"{one.after}.answer") for one in self.twice)


def finish_layout(result: LessonResult) -> FinishLayout:
    """The layout of a lesson: the same in all its languages, and for all wordings of it."""
    answers, stops, twice = answers_that_count(result), stops_of(result), asked_twice(result)
    return FinishLayout(
        lesson=mark(result.lesson.id),
        numbers=_numbers(result, {}),
        stops=stops,
        answers=tuple(one.id for one in answers),
        twice=twice,
    )


def mark(text: str) -> int:
    """The first 12 bits of the SHA-256 of a text."""
    return int.from_bytes(sha256(text.encode()).digest()[:2]) >> (16 - MARK_BITS)


def former_marks(result: LessonResult) -> tuple[tuple[int, ...], tuple[int, ...]]:
    """What codes hold that were shown while the lesson, or some of its stops, had other names.

    Returns:
        Marks of the lesson's older names, and of its numbers with every choice of names its stops had.
    """
    lesson = result.lesson
    named = [
        [(ids.stop, name) for name in (ids.stop, *stop.formerly)]
        for stop, ids in zip(lesson.file.stops, lesson.ids, strict=True)
        if stop.formerly
    ]
    choices = islice(product(*named), 1, _MOST_CHOICES)  # the first is how they are called today
    numbers = (_numbers(result, dict(choice)) for choice in choices)
    return tuple(map(mark, lesson.file.formerly)), tuple(dict.fromkeys(numbers))


def _numbers(result: LessonResult, names: Mapping[str, str]) -> int:
    """The mark of a lesson's numbers.

    Args:
        result: the lesson.
        names: by id of a stop, the name it had.
    """

    def named(name: str) -> str:
        stop, dot, inner = name.partition(".")
        return names.get(stop, stop) + dot + inner

    stops = map(named, stops_of(result))
    answers = (f"{named(one.id)}={one.value}" for one in answers_that_count(result))
    pairs = (f"{named(one.before)}>{named(one.after)}" for one in asked_twice(result))
    return mark("\n".join((*stops, *answers, *pairs)))
