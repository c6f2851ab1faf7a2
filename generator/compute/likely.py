"""The wrong answers a teacher will see to one gap, and what each tells."""

from __future__ import annotations

from decimal import Decimal

from generator.compute.gap import Gap
from generator.compute.mistakes import Mistake, counted, gap_answers, gap_mistake

_BUGS = (
    Mistake.SMALLER_FROM_LARGER,
    Mistake.NO_DECREMENT,
    Mistake.ZERO_GIVES_DIGIT,
    Mistake.ZERO_GIVES_ZERO,
    Mistake.ACROSS_ZERO,
    Mistake.ADDED,
)
"""The bugs of the literature; a slip of one place can happen with any number and tells little."""
LIKELY = (*_BUGS, Mistake.ONE_OFF)
"""All that a teacher is told of; below twenty children count, and miscount by one."""


def likely_answers(gap: Gap) -> tuple[tuple[Decimal, Mistake], ...]:
    """Wrong answers with the mistake behind each, most widespread first, each answer once.

    Source: Brown & Burton 1978, Cognitive Science 2:155-192; see ``compute/mistakes.py``.
    """
    if counted(gap.larger, gap.smaller):
        return tuple((answer, Mistake.ONE_OFF) for answer in _miscounted(gap))
    found: dict[Decimal, Mistake] = {}
    answers = gap_answers(int(gap.larger * 10), int(gap.smaller * 10))
    for mistake in _BUGS:
        for tenths in answers[mistake]:
            answer = tenths / 10
            if answer != gap.size and gap.larger != gap.smaller:
                found.setdefault(answer, mistake)
    return tuple(found.items())


def _miscounted(gap: Gap) -> tuple[Decimal, ...]:
    """One hop too few and one too many; nothing where both sides are alike. Common practice, no source."""
    if gap.holder is None:
        return ()
    near = (gap.size - 1, gap.size + 1)
    return tuple(
        answer
        for answer in near
        if answer >= 0 and gap_mistake(gap.larger, gap.smaller, answer) is Mistake.ONE_OFF
    )
