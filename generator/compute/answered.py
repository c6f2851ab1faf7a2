"""What codes tell of an answer: right at first and at last, with no more said than small counts allow."""

from __future__ import annotations

from dataclasses import dataclass

from generator.compute.small_counts import Hidden, Part, part
from generator.model.tally import RightAnswers


@dataclass(frozen=True, slots=True)
class Answered:
    """An answer of a lesson, of all its codes."""

    answer: str
    """Its id."""
    first: Part
    """How many had it right at first."""
    last: Part
    """How many had it right at first or later."""

    @property
    def missed(self) -> bool:
        """Whether what is shown tells that more than half did not have it right at first."""
        count = self.first.count
        return 2 * count < self.first.of if isinstance(count, int) else count is Hidden.FEW


def answered(right: RightAnswers, codes: int, at_least: int) -> Answered:
    """What may be said of an answer.

    Where both counts are shown, what lies between them is shown too, and what the larger one lacks;
    so the larger one is hidden where either is small, and which of the two is not said.
    """
    first = part(right.first, codes, at_least)
    last = part(right.first + right.later, codes, at_least)
    if isinstance(first.count, int) and (right.later < at_least or not isinstance(last.count, int)):
        last = Part(Hidden.UNTOLD, codes)
    return Answered(right.answer, first, last)
