"""Likely wrong answers in words: what each tells, and what to say next, as the page says it."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from generator.compute.count import Count
from generator.compute.gap import Gap
from generator.compute.likely import likely_answers, likely_counts, likely_sums
from generator.present.views.notes import LikelyView
from generator.present.words.families import MISTAKE, NOT_YET, SLIP, SLIP_NEXT
from generator.present.words.say import Say


def gap_likely(gap: Gap, say: Say) -> tuple[LikelyView, ...]:
    """Of a gap."""
    larger, smaller = say.number(gap.larger), say.number(gap.smaller)
    return tuple(
        LikelyView(
            say.number(answer),
            say(MISTAKE.key(mistake)),
            say(NOT_YET.key(mistake), larger=larger, smaller=smaller),
        )
        for answer, mistake in likely_answers(gap)
    )


def count_likely(gap: Gap, count: Count | None, say: Say) -> tuple[LikelyView, ...]:
    """Of its count; none where nothing is counted."""
    if count is None:
        return ()
    numbers = {
        "gap": say.number(gap.size),
        "per": say.number(count.per),
        "tens": say.number(count.per // 10),
        "more": say.number(gap.size % 100),
    }
    return tuple(
        LikelyView(
            say("likely_count", answer=say.number(answer)),
            say(MISTAKE.key(mistake)),
            say(NOT_YET.key(mistake), **numbers),
        )
        for answer, mistake in likely_counts(gap.size, count.per)
    )


def sum_likely(parts: Sequence[Decimal], say: Say) -> tuple[LikelyView, ...]:
    """Of a sum; none of a single number."""
    if len(parts) < 2:
        return ()
    return tuple(
        LikelyView(
            say("likely_sum", answer=say.number(answer)),
            say(SLIP.key(slip)),
            say(SLIP_NEXT.key(slip)),
        )
        for answer, slip in likely_sums(parts)
    )
