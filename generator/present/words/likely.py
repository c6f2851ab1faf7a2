"""Likely wrong answers in words: what each tells, and what to say next, as the page says it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from typing import NamedTuple

from generator.compute.count import Count
from generator.compute.gap import Gap
from generator.compute.likely import likely_answers, likely_counts, likely_sums
from generator.present.views.notes import LikelyView
from generator.present.words.families import MISTAKE, NOT_YET, SLIP, SLIP_NEXT
from generator.present.words.say import Say


class WrongAnswer(NamedTuple):
    """A likely wrong answer, as a number and in words."""

    value: Decimal
    means: str
    """What it tells."""
    say_next: str
    """What to say to a learner, as the page says it."""


def wrong_gaps(gap: Gap, say: Say) -> Iterator[WrongAnswer]:
    """Of a gap."""
    larger, smaller = say.number(gap.larger), say.number(gap.smaller)
    for answer, mistake in likely_answers(gap):
        means, key = say(MISTAKE.key(mistake)), NOT_YET.key(mistake)
        yield WrongAnswer(answer, means, say(key, larger=larger, smaller=smaller))


def wrong_counts(gap: Gap, count: Count, say: Say) -> Iterator[WrongAnswer]:
    """Of its count."""
    numbers = {
        "gap": say.number(gap.size),
        "per": say.number(count.per),
        "tens": say.number(count.per // 10),
        "more": say.number(gap.size % 100),
    }
    for answer, mistake in likely_counts(gap.size, count.per):
        means, key = say(MISTAKE.key(mistake)), NOT_YET.key(mistake)
        yield WrongAnswer(answer, means, say(key, **numbers))


def gap_likely(gap: Gap, say: Say) -> tuple[LikelyView, ...]:
    """Of a gap, for the notes."""
    return tuple(
        LikelyView(say.number(one.value), one.means, one.say_next) for one in wrong_gaps(gap, say)
    )


def count_likely(gap: Gap, count: Count | None, say: Say) -> tuple[LikelyView, ...]:
    """Of its count, for the notes; none where nothing is counted."""
    return tuple(
        LikelyView(say("likely_count", answer=say.number(one.value)), one.means, one.say_next)
        for one in (wrong_counts(gap, count, say) if count else ())
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
