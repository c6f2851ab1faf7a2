"""Two numbers that a claim is held against."""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal


@dataclass(frozen=True, slots=True)
class Pair:
    """Two shown values a claim can be about; of rows, how many it is so in and how many there are."""

    first: Decimal
    """Of the one the sentence is about."""
    second: Decimal
    """Of the one it is held against."""
    directed: bool = True
    """Whether the sentence says which is which."""
    others: tuple[Decimal, ...] = ()
    """What *the most* and *the least* are held against."""
    gaps: bool = False
    """Whether they are gaps of rows and not what foods hold."""
    counted: bool = False
    """Whether one of them is of several portions: *two apples*."""

    @property
    def turned(self) -> Pair:
        """The same two the other way round."""
        return replace(self, first=self.second, second=self.first)


@dataclass(frozen=True, slots=True)
class Subject:
    """All pairs a claim may be about."""

    pairs: tuple[Pair, ...]
    """In the order of the rows; none where nothing is known."""
    named: bool
    """Whether the sentence names a food, a side, a row, the total or both numbers."""
    every: bool = False
    """Whether all of them must make it hold, as in *the first and the third row*; else one will do."""


NOTHING_KNOWN = Subject((), named=False)
"""A claim about something that is not looked up here."""
