"""The wrong answers a teacher will see to a gap, a count or a sum, and what each tells."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from enum import StrEnum

from generator.compute.gap import Gap
from generator.compute.mistakes import (
    Mistake,
    count_answers,
    count_mistake,
    counted,
    gap_answers,
    gap_mistake,
)

_BUGS = (
    Mistake.SMALLER_FROM_LARGER,
    Mistake.NO_DECREMENT,
    Mistake.ZERO_GIVES_DIGIT,
    Mistake.ZERO_GIVES_ZERO,
    Mistake.ACROSS_ZERO,
    Mistake.ADDED,
    Mistake.TOOK_ZERO,
)
"""The bugs of the literature; a slip of one place can happen with any number and tells little."""
_OF_COUNTS = (
    Mistake.FORGOT_TO_DIVIDE,
    Mistake.COUNTED_LEFT_OVER,
    Mistake.COUNTED_TENS,
    Mistake.DIVIDED_BY_TENS,
    Mistake.GAVE_LEFT_OVER,
    Mistake.COUNTED_HUNDREDS,
    Mistake.STOPPED_AT_HUNDREDS,
)
"""What is seen of counts in a class; common practice, no source."""
LIKELY = (*_BUGS, Mistake.ONE_OFF, *_OF_COUNTS)
"""All that a teacher is told of; below twenty children count, and miscount by one."""


class SumSlip(StrEnum):
    """A way to a wrong sum; the value ends the keys of its texts. Common practice, no source."""

    NO_CARRY = "no_carry"
    """What a place makes beyond 9 is dropped: 90 + 420 = 410."""
    LEFT_ONE_OUT = "left_one_out"
    """The last number is not added."""


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


def likely_counts(gap: Decimal, per: Decimal) -> tuple[tuple[Decimal, Mistake], ...]:
    """Wrong counts with the mistake behind each, to a tenth at most, each answer once.

    Args:
        gap, per: the gap and how much of it is one count, in one unit.

    Raises:
        ValueError: the gap is negative or ``per`` is not above zero.
    """
    answers = count_answers(gap, per)
    return tuple(
        {
            answer: mistake
            for mistake in _OF_COUNTS
            for answer in answers[mistake]
            if not answer * 10 % 1 and count_mistake(gap, per, answer) is mistake
        }.items()
    )


def likely_sums(parts: Sequence[Decimal]) -> tuple[tuple[Decimal, SumSlip], ...]:
    """Wrong sums with the slip behind each, each answer once.

    Args:
        parts: what is added, in one unit, to a tenth at most and not negative.
    """
    slips = {_without_carry(parts): SumSlip.NO_CARRY}
    if len(parts) > 1:
        slips.setdefault(sum(parts[:-1], Decimal(0)), SumSlip.LEFT_ONE_OUT)
    right = sum(parts, Decimal(0))
    return tuple((answer, slip) for answer, slip in slips.items() if answer != right)


def _without_carry(parts: Sequence[Decimal]) -> Decimal:
    """Each place keeps its ones alone; the first has nowhere to carry to."""
    tenths = [int(part * 10) for part in parts]
    first = len(str(max(tenths, default=0))) - 1
    kept = [sum(one // 10**place % 10 for one in tenths) for place in range(first + 1)]
    places = enumerate(kept)
    return Decimal(sum((n if at == first else n % 10) * 10**at for at, n in places)) / 10


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
