"""What codes tell of an answer: right at first and at last, with no more said than small counts allow."""

from __future__ import annotations

from dataclasses import dataclass

from generator.compute.small_counts import Hidden, Part, part
from generator.model.tally import RightAnswers


@dataclass(frozen=True, slots=True)
class Answered:
    """An answer of a lesson, of the codes of those who were asked for it."""

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
    so the larger one is hidden where either is small, and which of the two is not said. Who was not
    asked is left out of all of them, and counts as not right where those are few.

    Args:
        right: what was counted.
        codes: of the lesson, a number that is shown.
        at_least: the smallest count that is shown.
    """
    untold = Part(Hidden.UNTOLD, codes)
    if right.asked < at_least:
        return Answered(right.answer, untold, untold)
    of = right.asked if codes - right.asked >= at_least else codes
    first = part(right.first, of, at_least)
    last = part(right.first + right.later, of, at_least)
    if isinstance(first.count, int) and (right.later < at_least or not isinstance(last.count, int)):
        last = Part(Hidden.UNTOLD, of)
    return Answered(right.answer, first, last)
