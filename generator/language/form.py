"""What kinds of claims about two numbers there are, and how exactly they are meant."""

from __future__ import annotations

from enum import StrEnum


class Form(StrEnum):
    """What kind of claim a phrase makes."""

    TIMES = "times"
    """One number is so many times the other: ``twice``, ``three times``."""
    SHARE = "share"
    """One number is a part of the other: ``half``, ``a third``, ``40 percent of``."""
    SAME = "same"
    """Both numbers are alike."""
    GAP = "gap"
    """The gap between them is so large: ``320 more``; ``less`` when the number is negative."""
    GAP_SHARE = "gap share"
    """The gap is such a part of the other: ``50 % more``, ``a third less``; negative for less."""
    MORE = "more"
    """The one named holds more."""
    LESS = "less"
    """The one named holds less."""
    MOST = "most"
    """None holds more than the one named."""
    LEAST = "least"
    """None holds less than the one named."""
    ROWS = "rows"
    """The side named holds more in so many rows; less when the number is negative."""
    EVERY_ROW = "every row"
    """The same of all rows."""


class Leeway(StrEnum):
    """How near the number has to be."""

    PLAIN = "plain"
    ALMOST = "almost"
    BARELY = "barely"
    ABOUT = "about"
    OVER = "over"
    UNDER = "under"
    AT_LEAST = "at least"
    AT_MOST = "at most"
