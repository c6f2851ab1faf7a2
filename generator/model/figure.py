"""What the numbers of a lesson can be, and what is counted that no food holds."""

from __future__ import annotations

from enum import StrEnum


class FigureKind(StrEnum):
    """What a number is."""

    HOLDS = "holds"
    """What one food holds."""
    GAP = "gap"
    """What lies between the two sides of a row, of all rows, or of a day."""
    COUNT = "count"
    """How many times the moves of a gap are done."""
    LEFT_OVER = "left-over"
    """What of a gap makes no whole count."""
    TOTAL = "total"
    """What one side holds in all rows together."""
    ONE_MOVE_PER = "one-move-per"
    """How much of a gap stands for one count."""
    ESTIMATE = "estimate"
    """About what a gap is, between rounded numbers."""
    ANSWER = "answer"
    """The answer to a question that the lesson computes."""
    MINUTES = "minutes"
    """A gap in minutes of a move, for the teaching notes alone."""
    EATEN = "eaten"
    """What a day gave."""
    NEEDED = "needed"
    """What a day took."""


class Tally(StrEnum):
    """What is counted that no food holds."""

    TIMES = "times"
    MINUTES = "minutes"
