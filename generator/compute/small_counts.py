"""Small counts hidden, and as many others with them as it takes that none can be computed from the rest.

Counts below 10 are hidden unless somebody says otherwise: the most common rule of US states, 39 of them
(NCES 2011-603, SLDS Technical Brief 3, R; they range from 5 to 30). A second count is hidden where a
total would give the first one away.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

AT_LEAST = 10
"""The smallest count that is shown, unless somebody says otherwise."""
LEAST = 5
"""The smallest that may be asked for: no US state goes below it (NCES 2011-603, R)."""
_PART = 5
"""Of so many parts of what is not small, one at most is hidden for the sake of the total; our choice, no source."""


class Hidden(StrEnum):
    """What is said in the place of a count."""

    FEW = "few"
    """It is small."""
    ALL_BUT_FEW = "all_but_few"
    """What it lacks to all of them is small."""
    UNTOLD = "untold"
    """It or what it lacks may be small, and which of them is not said."""


@dataclass(frozen=True, slots=True)
class Part:
    """Some of a number that is shown."""

    count: int | Hidden
    """How many, or why that is not said."""
    of: int
    """All of them."""


@dataclass(frozen=True, slots=True)
class Shown:
    """Counts with what they come to; nothing where a count is hidden."""

    counts: tuple[int | None, ...]
    """In the order they were given."""
    total: int | None
    """What all of them come to."""


def part(count: int, of: int, at_least: int) -> Part:
    """Some of a number that is shown; hidden where these or the others are few.

    Which of both is few is said only where each of them may be anything from none on.
    """
    if of < 2 * at_least:
        return Part(Hidden.UNTOLD, of)
    if count < at_least:
        return Part(Hidden.FEW, of)
    if of - count < at_least:
        return Part(Hidden.ALL_BUT_FEW, of)
    return Part(count, of)


def shown(counts: Sequence[int], at_least: int) -> Shown:
    """Which counts of a list can be shown beside their total.

    Small ones are hidden; then, from the smallest, one after another with all that equal it, until
    the total no longer tells what any of them is. Where that would hide more than a fifth of what is
    not small, the total is hidden in their place, for which the small ones themselves count nothing:
    else the choice would tell of them.

    Args:
        counts: each at least one.
        at_least: the smallest count that is shown.
    """
    small = {at for at, count in enumerate(counts) if count < at_least}
    hidden = _with_others(small, counts, at_least)
    large = sum(count for count in counts if count >= at_least)
    taken = sum(counts[at] for at in hidden - small)
    if taken * _PART <= large and not _given_away([counts[at] for at in hidden], at_least):
        return Shown(_kept(counts, hidden), sum(counts))
    return Shown(_kept(counts, small), None)


def _with_others(small: set[int], counts: Sequence[int], at_least: int) -> set[int]:
    """The places of small counts, and of others as far as there are any that must go with them."""
    hidden = set(small)
    while _given_away([counts[at] for at in hidden], at_least):
        left = [count for at, count in enumerate(counts) if at not in hidden]
        if not left:
            break
        hidden |= {at for at, count in enumerate(counts) if count == min(left)}
    return hidden


def _kept(counts: Sequence[int], hidden: set[int]) -> tuple[int | None, ...]:
    return tuple(None if at in hidden else count for at, count in enumerate(counts))


def _given_away(hidden: Sequence[int], at_least: int) -> bool:
    """Whether what hidden counts come to tells what they are, or is itself small."""
    if not hidden:
        return False
    alone = len(hidden) < 2 or sum(hidden) < at_least
    if max(hidden) >= at_least:  # a larger one among them: they may stand in any order
        return alone
    return alone or all(one == 1 for one in hidden) or all(one == at_least - 1 for one in hidden)
