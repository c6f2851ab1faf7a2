"""How long words take to say, at a pace that children of a grade band can follow."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import ceil

from generator.model.grades import GradeBand

WORDS_A_MINUTE: Mapping[GradeBand, int] = {
    GradeBand.K_2: 120,
    GradeBand.G3_5: 130,
    GradeBand.G6_8: 135,
}
"""Pace of narration by grade band.

What audiologists quote (2013; a transcription, status S): 120 to 124 words a minute at 3 to 5 years,
128 to 130 at 5 to 7, about 135 in grades 5 and 6 and 135 to 140 in middle school. They are the
statements of experts and no controlled standard, so the lower figure is taken.
"""


def seconds_to_say(words: int, words_a_minute: int) -> int:
    """Whole seconds, rounded up.

    Args:
        words: how many.
        words_a_minute: the pace, above 0.
    """
    return ceil(Fraction(words * 60, words_a_minute))
