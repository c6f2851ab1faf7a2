"""What is asked of a count, and the hint to it, by what one count is made of."""

from __future__ import annotations

from decimal import Decimal

from generator.compute.count_up import count_up
from generator.compute.gap import Gap
from generator.present.words.families import COUNT_HINT, COUNT_OF
from generator.present.words.say import Say

_MADE_OF = {
    Decimal(1): "ones",
    Decimal(2): "twos",
    Decimal(4): "fours",
    Decimal(5): "fives",
    Decimal(10): "tens",
    Decimal(20): "twenties",
    Decimal(50): "fifties",
    Decimal(100): "hundreds",
}
_GROUPS = "groups"


def count_question(per: Decimal, say: Say) -> str:
    """``How many tens?``, above the room for the count."""
    return say(COUNT_OF.key(_MADE_OF.get(per, _GROUPS)), per=say.number(per))


def count_hint(per: Decimal, say: Say) -> str:
    """How to find the count, in words that give no number of the row away."""
    made_of = _MADE_OF.get(per, _GROUPS)
    hint = made_of if made_of in COUNT_HINT.members else _GROUPS
    return say(COUNT_HINT.key(hint), per=say.number(per))


def count_up_words(gap: Gap, say: Say) -> str:
    """The gap by counting up, hop by hop: a second way beside taking away; empty for a gap of 0."""
    added = count_up_sum(gap, say)
    if not added:
        return ""
    return say(
        "way_count_up",
        smaller=say.number(gap.smaller),
        larger=say.number(gap.larger),
        sum=added,
    )


def count_up_sum(gap: Gap, say: Say) -> str:
    """The hops added, ``10 + 300 + 10 = 320``; one hop alone, and empty for a gap of 0."""
    sizes = [say.number(hop.size) for hop in count_up(gap.smaller, gap.larger)]
    added = " + ".join(sizes)
    return say.from_left(f"{added} = {say.number(gap.size)}" if len(sizes) > 1 else added)
