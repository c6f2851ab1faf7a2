"""A number as base-ten blocks, and what is left when two numbers are matched block by block.

Base-ten blocks (Dienes blocks) are the standard classroom manipulative: a flat is a hundred,
a rod is a ten, a cube is a one. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal


@dataclass(frozen=True, slots=True)
class Blocks:
    """How many blocks of each size make a number."""

    hundreds: int
    tens: int
    """0 to 9."""
    ones: int
    """0 to 9."""
    half: bool = False
    """Whether half a one is left, as in 2.5 g."""

    @property
    def value(self) -> Decimal:
        """The number the blocks make."""
        return Decimal(self.hundreds * 100 + self.tens * 10 + self.ones) + (
            Decimal("0.5") if self.half else 0
        )


def to_blocks(value: Decimal) -> Blocks:
    """Take a number apart.

    Raises:
        ValueError: it is negative, or has a part that is not one half.
    """
    whole, part = divmod(value, 1)
    if value < 0 or part not in {Decimal(0), Decimal("0.5")}:
        raise ValueError(f"{value} cannot be laid in blocks")
    hundreds, rest = divmod(int(whole), 100)
    tens, ones = divmod(rest, 10)
    return Blocks(hundreds, tens, ones, part != 0)
