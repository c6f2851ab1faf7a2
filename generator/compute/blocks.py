"""A number as base-ten blocks, and what is left when two numbers are matched block by block.

Base-ten blocks (Dienes blocks) are the standard classroom manipulative: a flat is a hundred,
a rod is a ten, a cube is a one; a thin slice of a cube is a tenth. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.compute.count import Count


@dataclass(frozen=True, slots=True)
class Blocks:
    """How many blocks of each size make a number."""

    hundreds: int
    """Flats of ten by ten."""
    tens: int
    """0 to 9."""
    ones: int
    """0 to 9."""
    tenths: int = 0
    """0 to 9; five of them are half a one, as in 2.5 g."""

    @property
    def value(self) -> Decimal:
        """The number the blocks make."""
        wholes = self.hundreds * 100 + self.tens * 10 + self.ones
        return wholes + Decimal(self.tenths) / 10


def to_blocks(value: Decimal) -> Blocks:
    """Take a number apart.

    Raises:
        ValueError: it is negative, or has a part finer than a tenth.
    """
    if value < 0 or value * 10 % 1:
        raise ValueError(f"{value} cannot be laid in blocks")
    wholes, tenths = divmod(int(value * 10), 10)
    hundreds, rest = divmod(wholes, 100)
    tens, ones = divmod(rest, 10)
    return Blocks(hundreds, tens, ones, tenths)


@dataclass(frozen=True, slots=True)
class Groups:
    """A gap laid in groups of what one count stands for, and what makes no whole group."""

    times: int
    """How many groups."""
    each: Blocks
    """The blocks of one."""
    rest: Blocks
    """What is left over."""


def to_groups(count: Count) -> Groups:
    """Lay a counted gap out so that its counts can be seen.

    Raises:
        ValueError: one count or what is left over has a part finer than a tenth.
    """
    return Groups(count.whole, to_blocks(count.per), to_blocks(count.left_over))
