"""A lesson in a class: groups, blocks for a group, and where two halves meet. Common practice, no source."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import accumulate

from generator.compute.blocks import Blocks, to_blocks
from generator.compute.result import LessonResult

CLASS = 25
"""Children of the class that materials are reckoned for."""
GROUPS = CLASS // 2
"""Pairs, one of them a group of three."""


def blocks_for_a_group(result: LessonResult) -> Blocks | None:
    """The fewest blocks that lay both numbers of any row of the lesson; nothing without rows.

    A tenth is cut from a one, so a number with tenths needs one more.
    """
    rows = [row.gap for one in result.comparisons.values() for row in one.rows]
    laid = [_both(gap.first, gap.second) for gap in rows]
    if not laid:
        return None
    return Blocks(
        max(one.hundreds for one in laid),
        max(one.tens for one in laid),
        max(one.ones for one in laid),
    )


def first_half(minutes: Sequence[int]) -> int:
    """How many stops make the first of two halves, as even as can be; 0 where there are not two stops.

    Args:
        minutes: of each stop, in order.
    """
    if len(minutes) < 2:
        return 0
    total, before = sum(minutes), tuple(accumulate(minutes))[:-1]
    return min(range(len(before)), key=lambda at: abs(2 * before[at] - total)) + 1


def _both(first: Decimal, second: Decimal) -> Blocks:
    one, other = to_blocks(first), to_blocks(second)
    cut = (one.tenths > 0) + (other.tenths > 0)
    return Blocks(one.hundreds + other.hundreds, one.tens + other.tens, one.ones + other.ones + cut)
