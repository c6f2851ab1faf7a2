"""A set of practice problems of a lesson's own size: gaps, counts with something left over, an even row, a side to name.

The set is made from the subtractions of ``practice.py``: some of them become problems of another
kind, by their place alone, so that a seed gives the same set on any machine.
``theme/js/practice-kinds.js`` does the same in the browser, held to it by ``tests/examples/practice.json``.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from generator.compute.practice import LARGEST, PracticeProblem, practice_problems
from generator.compute.result import LessonResult
from generator.model.stops.compare import Solve

SIZES = (20, 100, 1000, 3000, 10_000, 20_000)
"""Largest numbers to choose from; a lesson's own is the first that holds all of its numbers."""
_ROUND = 6
"""After so many problems the kinds begin anew."""
_COUNTS = (2, 5)
"""Places in a round, from 1, that are counts: one problem in three."""
_EVEN, _WHICH = 4, 6
"""Places of the even row, and of the one that asks for a side."""
_MOST_COUNTS = 40
"""A count of more than that takes long and teaches no more."""


class Kind(StrEnum):
    """What a problem asks for."""

    GAP = "gap"
    """The gap of ``first`` and ``second``, ``first`` being no smaller."""
    COUNT = "count"
    """How often ``second`` fits into ``first``, and what is left over."""
    WHICH = "which"
    """Which of two sides holds more, and how much more."""


@dataclass(frozen=True, slots=True)
class Problem:
    """One problem of a set."""

    kind: Kind
    first: int
    """What stands first in it: a side, or the gap that is counted."""
    second: int
    """The other side, or how much one count is."""


@dataclass(frozen=True, slots=True)
class Plan:
    """What a lesson's problems are made of."""

    largest: int
    """No number is larger."""
    per: int
    """What one count stands for; 0 where nothing is counted."""


def plan_of(result: LessonResult) -> Plan:
    """The size of a lesson's own numbers, and its own step of counting."""
    shown = [
        value
        for one in result.comparisons.values()
        for row in one.rows
        for value in (row.gap.first, row.gap.second)
    ] + [value for day in result.days.values() for value in (day.balance.eaten, day.balance.needed)]
    counted = (one for one in result.comparisons.values() if Solve.COUNT in one.stop.solve)
    per = next((one.counts.per for one in counted if one.counts), 0)
    band = LARGEST[result.lesson.file.grades.band]
    own = next((size for size in SIZES if size >= max(shown)), SIZES[-1]) if shown else band
    return Plan(own, int(per) if per == int(per) else 0)


def practice_set(seed: str, plan: Plan, number: int) -> tuple[Problem, ...]:
    """The first problems of a seed.

    Args:
        seed: any text; the lesson's id serves.
        plan: how large the numbers are, and what is counted.
        number: how many.
    """
    pairs = practice_problems(seed, plan.largest, number)
    return tuple(_made(pair, place, plan) for place, pair in enumerate(pairs, 1))


def _made(pair: PracticeProblem, place: int, plan: Plan) -> Problem:
    at = (place - 1) % _ROUND + 1
    most = min(_MOST_COUNTS, (plan.largest + 1) // plan.per - 1) if plan.per > 1 else 0
    if at in _COUNTS and most > 0:
        whole = 1 + pair.larger % most
        left_over = 1 + pair.smaller % (plan.per - 1)
        return Problem(Kind.COUNT, plan.per * whole + left_over, plan.per)
    if at == _EVEN:
        return Problem(Kind.GAP, pair.larger, pair.larger)
    if at == _WHICH:
        swapped = (pair.larger + pair.smaller) % 2 == 1
        ordered = (pair.smaller, pair.larger) if swapped else (pair.larger, pair.smaller)
        return Problem(Kind.WHICH, *ordered)
    return Problem(Kind.GAP, pair.larger, pair.smaller)
