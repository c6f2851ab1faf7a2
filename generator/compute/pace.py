"""How long words take to say at a pace; the paces themselves stand in ``model/pace.py``."""

from __future__ import annotations

from fractions import Fraction
from math import ceil


def seconds_to_say(words: int, words_a_minute: int) -> int:
    """Whole seconds, rounded up.

    Args:
        words: how many.
        words_a_minute: the pace, above 0.
    """
    return ceil(Fraction(words * 60, words_a_minute))
