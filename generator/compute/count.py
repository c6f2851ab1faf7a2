"""A gap as a count of moves: whole counts, and what is left over."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal


@dataclass(frozen=True, slots=True)
class Count:
    """How many times ``per`` fits into a gap."""

    whole: int
    """How many times the move is done."""
    left_over: Decimal
    """What remains of the gap, in the measure's unit; less than ``per``."""
    per: Decimal
    """How much of the gap stands for one count."""


def count_moves(gap: Decimal, per: Decimal) -> Count:
    """Divide a gap into counts.

    Raises:
        ValueError: the gap is negative, or ``per`` is not above zero.
    """
    if gap < 0 or per <= 0:
        raise ValueError(f"{gap} cannot be counted in steps of {per}")
    whole, left_over = divmod(gap, per)
    return Count(int(whole), left_over, per)
