"""What arithmetic the numbers of a lesson ask for, and from which school grade on children meet it.

Codes and grades are those of the Common Core State Standards for Mathematics (2010); beside each
stands how it was read: S in a transcription, M from memory.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from generator.compute.result import Comparison, LessonResult
from generator.model.grades import Grades
from generator.model.stops.compare import Solve

FAR = 2
"""Grades below the first from which on numbers are far below it; our choice, no source."""


@dataclass(frozen=True, slots=True)
class Expected:
    """One kind of arithmetic."""

    what: str
    """In a few words, as the standard has it."""
    grade: int
    """The first school grade that expects it; kindergarten is 0."""
    code: str
    """Of the standard."""
    still: int = 0
    """The last grade that works at it, where that is later than the first."""

    @property
    def last_grade(self) -> int:
        """The grade after which children do more than this."""
        return max(self.grade, self.still)

    def beyond(self, grades: Grades) -> bool:
        """Whether children of some grades have not met it yet, not even the oldest."""
        return self.grade > grades.last

    def far_below(self, grades: Grades) -> bool:
        """Whether it is long done with, even for the youngest."""
        return self.last_grade <= grades.first - FAR


SUBTRACTING = (
    (Decimal(10), Expected("subtracting within 10", 0, "K.OA.A.2")),  # M
    (Decimal(20), Expected("subtracting within 20", 1, "1.OA.C.6")),  # M
    (Decimal(100), Expected("subtracting within 100", 2, "2.NBT.B.5")),  # M
    (
        Decimal(1000),
        Expected("subtracting within 1,000", 2, "2.NBT.B.7", still=3),
    ),  # S; 3.NBT.A.2, S
)
"""By the largest number there is, up to and with it."""
_BEYOND = Expected("subtracting beyond 1,000", 4, "4.NBT.B.4")  # M
_TENTHS = Expected("subtracting tenths", 5, "5.NBT.B.7")  # M
_PAIRS = Expected("dividing by 2", 2, "2.OA.C.3")  # M: pairs, and what is left without one
_TENS = Expected("counting the tens in a number", 2, "2.NBT.A.1")  # M
_FACTS = Expected("dividing by one digit within 100", 3, "3.OA.C.7")  # M
_ONE_DIGIT = Expected("dividing by one digit with a remainder or beyond 100", 4, "4.NBT.B.6")  # M
_TWO_DIGITS = Expected("dividing by a number of two digits", 5, "5.NBT.B.6")  # M
_FACTS_TO = 100
_ONE_DIGIT_TO = 10


def subtracting(larger: Decimal, smaller: Decimal) -> Expected:
    """What it takes to find a gap."""
    if larger % 1 or smaller % 1:
        return _TENTHS
    return next((one for most, one in SUBTRACTING if larger <= most), _BEYOND)


def dividing(gap: Decimal, per: Decimal) -> Expected | None:
    """What it takes to turn a gap into a count; nothing where every one is a count or nothing is whole."""
    if gap % 1 or per % 1 or per <= 1:
        return None
    if per in (10, 100):
        return _TENS
    if per == 2:  # pairs
        return _PAIRS
    if per >= _ONE_DIGIT_TO:
        return _TWO_DIGITS
    return _ONE_DIGIT if gap % per or gap > _FACTS_TO else _FACTS


def asked_of(result: LessonResult) -> Iterator[Expected]:
    """The arithmetic of every gap and count that a lesson asks its learner to find."""
    for comparison in result.comparisons.values():
        yield from _of_comparison(comparison)
    for day in result.days.values():
        eaten, needed = day.balance.eaten, day.balance.needed
        yield subtracting(max(eaten, needed), min(eaten, needed))


def _of_comparison(comparison: Comparison) -> Iterator[Expected]:
    solve, gaps = comparison.stop.solve, [row.gap for row in comparison.rows]
    asked = gaps if Solve.GAP in solve else []
    for gap in [*asked, comparison.total] if Solve.TOTAL in solve else asked:
        yield subtracting(gap.larger, gap.smaller)
    if comparison.counts and Solve.COUNT in solve:
        for count, gap in zip(comparison.counts.rows, gaps, strict=True):
            if one := dividing(gap.size, count.per):
                yield one
