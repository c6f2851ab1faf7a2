"""What one changed food does to a gap: which way it goes, which change brings the sides closest, which guesses are likely."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum

from generator.compute.gap import Gap


class Way(StrEnum):
    """Which way a gap goes when one side changes."""

    SMALLER = "smaller"
    """What lies between the sides is less than before; nothing at all counts as less."""
    LARGER = "larger"
    """It is more than before, or there was none."""
    SAME = "same"
    """It is as large as before, and the same side holds more."""
    OVER = "over"
    """The other side holds more now, by however much."""


class Reason(StrEnum):
    """Why a learner may well have guessed another way; ours, no source."""

    ONE_SIDE_GREW = "one side grew"
    """The changed side alone was looked at: it holds more, so the gap should."""
    ONE_SIDE_SHRANK = "one side shrank"
    """The same with less."""
    CLOSER_FIRST = "closer first"
    """The sides come closer, and then pass each other."""
    ONE_ROW = "one row"
    """In its own row the other side holds more now; over all rows it does not."""


@dataclass(frozen=True, slots=True)
class LikelyGuess:
    """A guess that does not come true."""

    way: Way
    """Which way it has the gap go."""
    reason: Reason
    """Why somebody may think so."""


def way_of(before: Gap, after: Gap) -> Way:
    """Which way the gap went."""
    if {before.holder, after.holder} == {0, 1}:
        return Way.OVER
    if after.size == before.size:
        return Way.SAME
    return Way.SMALLER if after.size < before.size else Way.LARGER


def closest(before: Gap, after: Sequence[Gap]) -> tuple[int, ...]:
    """Which changes bring the sides closest, by their places; none where no gap is smaller than before."""
    least = min(gap.size for gap in after)
    return tuple(at for at, gap in enumerate(after) if gap.size == least < before.size)


def even(after: Sequence[Gap]) -> tuple[int, ...]:
    """Which changes leave no gap, by their places."""
    return tuple(at for at, gap in enumerate(after) if gap.holder is None)


def likely_guesses(
    before: tuple[Gap, Gap], after: tuple[Gap, Gap], side: int
) -> tuple[LikelyGuess, ...]:
    """Guesses to expect that do not come true, each way once.

    Args:
        before: the gap of the changed row, and that of all rows together.
        after: the same two with the change.
        side: which side was changed, 0 or 1.
    """
    way = way_of(before[1], after[1])
    found: dict[Way, Reason] = {}
    for guess, reason in _tempting(before, after, side, way):
        if guess is not way:
            found.setdefault(guess, reason)
    return tuple(LikelyGuess(guess, reason) for guess, reason in found.items())


def _tempting(
    before: tuple[Gap, Gap], after: tuple[Gap, Gap], side: int, way: Way
) -> Iterator[tuple[Way, Reason]]:
    was, now = ((gap.first, gap.second)[side] for gap in (before[1], after[1]))
    if now > was:
        yield Way.LARGER, Reason.ONE_SIDE_GREW
    if now < was:
        yield Way.SMALLER, Reason.ONE_SIDE_SHRANK
    if way is Way.OVER:
        yield Way.SMALLER, Reason.CLOSER_FIRST
    if way_of(before[0], after[0]) is Way.OVER:
        yield Way.OVER, Reason.ONE_ROW
