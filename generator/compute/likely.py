"""The wrong answers a teacher will see to one gap, and what each tells."""

from __future__ import annotations

from decimal import Decimal

from generator.compute.gap import Gap
from generator.compute.mistakes import Mistake, gap_answers

LIKELY = (
    Mistake.SMALLER_FROM_LARGER,
    Mistake.NO_DECREMENT,
    Mistake.ZERO_GIVES_DIGIT,
    Mistake.ZERO_GIVES_ZERO,
    Mistake.ACROSS_ZERO,
    Mistake.ADDED,
)
"""The bugs of the literature; a slip of one place can happen with any number and tells little."""


def likely_answers(gap: Gap) -> tuple[tuple[Decimal, Mistake], ...]:
    """Wrong answers with the mistake behind each, most widespread first, each answer once.

    Source: Brown & Burton 1978, Cognitive Science 2:155-192; see ``compute/mistakes.py``.
    """
    found: dict[Decimal, Mistake] = {}
    answers = gap_answers(int(gap.larger * 10), int(gap.smaller * 10))
    for mistake in LIKELY:
        for tenths in answers[mistake]:
            answer = tenths / 10
            if answer != gap.size and gap.larger != gap.smaller:
                found.setdefault(answer, mistake)
    return tuple(found.items())
