"""What is left of a row in base-ten blocks, as it is counted: block by block, or in rings of the divisor."""

from __future__ import annotations

from decimal import Decimal

from generator.compute.blocks import to_groups
from generator.compute.count import Count
from generator.compute.gap import Gap
from generator.present.views.amounts import BlocksView, RingsView
from generator.present.words.amounts import blocks_view
from generator.present.words.say import Say

_MOST = 120
"""Rings, or ones on their own, in one picture; more of them nobody counts."""
_HUNDRED, _TEN, _ONE = Decimal(100), Decimal(10), Decimal(1)


def left_view(gap: Gap, count: Count | None, say: Say) -> BlocksView:
    """What is left when both sides are matched, in the blocks that are counted: tens, if nothing else."""
    per = count.per if count else _TEN
    if per == _HUNDRED:
        return blocks_view(gap.size, say)
    if count and per == _ONE and count.whole <= _MOST:
        return blocks_view(gap.size, say, opened=10)
    return blocks_view(gap.size, say, opened=100)


def rings_view(count: Count, say: Say) -> RingsView | None:
    """Rings around the blocks of one count each; nothing where a count is one block, or too many are needed."""
    if count.per in {_HUNDRED, _TEN, _ONE} or not 0 < count.whole <= _MOST:
        return None
    if count.per * 10 % 1:  # no block stands for less than a tenth
        return None
    groups = to_groups(count)
    each, rest = blocks_view(groups.each.value, say), blocks_view(groups.rest.value, say)
    number = say.number(groups.times)
    label = say("blocks_groups", n=groups.times, number=number, group=each.label)
    if count.left_over:
        label = say("blocks_outside", groups=label, rest=rest.label)
    return RingsView(label, groups.times, each, rest)
