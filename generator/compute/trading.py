"""Whether a subtraction on paper needs trading: a ten for ten ones, a hundred for ten tens."""

from __future__ import annotations

from enum import StrEnum


class Trading(StrEnum):
    """What a column subtraction asks of a learner."""

    NONE = "none"
    """In each place the upper digit is large enough."""
    TENS = "tens"
    """Something is traded, and the next place always has one to give."""
    ZERO = "zero"
    """Something is traded from beyond a 0, where children go wrong most."""


def trading(top: int, bottom: int) -> Trading:
    """What taking one number from another needs, place by place from the ones on.

    A place lends to the one right of it; one that holds 0 has nothing to lend and borrows first
    itself. What a place has lent is gone before its own digit is taken away.

    Args:
        top, bottom: whole numbers, or tenths as whole numbers; the first is not the smaller.

    Raises:
        ValueError: more is taken away than there is.
    """
    if top < bottom:
        raise ValueError(f"{top} is smaller than {bottom}")
    owed, found = 0, Trading.NONE
    while bottom or owed:
        digit = top % 10
        if owed and digit == 0:
            return Trading.ZERO
        owed = int(digit - owed < bottom % 10)
        if owed:
            found = Trading.TENS
        top, bottom = top // 10, bottom // 10
    return found
