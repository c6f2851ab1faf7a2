"""Subtraction practice from a seed: the same seed gives the same problems on any machine."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from zlib import crc32

from generator.model.grades import GradeBand

_LARGEST = {GradeBand.K_2: 100, GradeBand.G3_5: 1000, GradeBand.G6_8: 3000}
"""Largest number by band: within 100 and within 1000 as in CCSS 2.NBT.B.5 and 3.NBT.A.2 (first code from memory)."""


@dataclass(frozen=True, slots=True)
class Problem:
    """One subtraction of two numbers that end in zero, as label values do."""

    larger: int
    smaller: int

    @property
    def gap(self) -> int:
        """The answer."""
        return self.larger - self.smaller


def practice_problems(seed: str, band: GradeBand, number: int = 6) -> tuple[Problem, ...]:
    """Different problems that need regrouping about half of the time.

    Args:
        seed: any text; the lesson's id serves.
        band: sets the size of the numbers.
        number: how many.
    """
    found: dict[tuple[int, int], Problem] = {}
    draws = _draws(seed)
    while len(found) < number:
        one, other = (10 * (1 + next(draws) % (_LARGEST[band] // 10)) for _ in range(2))
        if abs(one - other) >= 20:
            found.setdefault(
                (max(one, other), min(one, other)), Problem(max(one, other), min(one, other))
            )
    return tuple(found.values())


def _draws(seed: str) -> Iterator[int]:
    """Whole numbers of 32 bits by xorshift (Marsaglia 2003, J Stat Softw 8(14), shifts 13, 17, 5)."""
    state = crc32(seed.encode()) or 1
    while True:
        state ^= (state << 13) & 0xFFFFFFFF
        state ^= state >> 17
        state ^= (state << 5) & 0xFFFFFFFF
        yield state >> 3  # the lowest bits are the weakest
