"""How the minutes of a lesson are shared out among its stops.

The rule is ours, common practice, no source: a stop has its own part of the film, and of the rest
of the time as much as there is to do in it.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction


def parts_of_time(
    total: int, film: Sequence[Fraction], work: Sequence[int]
) -> tuple[Fraction, ...]:
    """Exact minutes of each stop; together they are the total.

    Where the film is longer than the total, or nothing is to be done beside it, its parts are
    drawn together or out to fill the time; without either all stops have the same.

    Args:
        total: minutes of the lesson.
        film: minutes of the film that lead through each stop.
        work: how much there is to do in each stop beside the film, in shares.
    """
    watched, todo = Fraction(sum(film)), sum(work)
    if not watched and not todo:
        return tuple(Fraction(total, len(film)) for _ in film)
    rest = max(total - watched, Fraction(0)) if todo else Fraction(0)
    drawn = (total - rest) / watched if watched else Fraction(0)
    share = rest / todo if todo else Fraction(0)
    return tuple(part * drawn + shares * share for part, shares in zip(film, work, strict=True))


def in_whole_minutes(parts: Sequence[Fraction]) -> tuple[int, ...]:
    """Whole minutes with the very sum of the parts; each has one at least where there are enough.

    Minute by minute goes to the part that is furthest behind, to the earlier of two alike.

    Args:
        parts: exact minutes, not negative, together a whole number.
    """
    total = int(sum(parts))
    given = [int(total >= len(parts))] * len(parts)
    for _ in range(total - sum(given)):
        behind = max(range(len(parts)), key=lambda at: (parts[at] - given[at], -at))
        given[behind] += 1
    return tuple(given)
