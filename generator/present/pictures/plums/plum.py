"""The plum with its stem: the one outline that every plum of a site is drawn by.

Drawings, the figures' heads, a day's plumb line, the icon and the slides take it from here. Styles
and scripts reach no Python; what they say of it a test holds to this.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

from generator.present.pictures.plums.shapes import length

WIDE, HIGH = 13, 15
"""Units: half of a fruit."""
STEM, STALK = 6, 3
"""Units: how far the stem stands up from the fruit, and how wide it is: as wide as the thread that holds it."""


@dataclass(frozen=True, slots=True)
class Plum:
    """A fruit and its stem, in one line around both."""

    x: float
    y: float
    """Where the stem meets the fruit, in the middle of its upper end."""
    size: float
    """1 for a whole one."""

    @property
    def path(self) -> str:
        """As SVG and CSS write it."""
        stalk, wide, high = (length(one * self.size) for one in (STALK, WIDE, HIGH))
        sinks = HIGH * (
            1 - sqrt(1 - (STALK / 2 / WIDE) ** 2)
        )  # where the stem's sides meet the fruit
        begins = f"M{length(self.x - STALK / 2 * self.size)} {length(self.top)}h{stalk}"
        down = length((STEM + sinks) * self.size)
        return f"{begins}v{down}a{wide} {high} 0 1 1-{stalk} 0z"

    @property
    def top(self) -> float:
        """No part of it is higher."""
        return self.y - STEM * self.size

    @property
    def bottom(self) -> float:
        """No part of it is lower."""
        return self.y + 2 * HIGH * self.size

    def across(self, y: float) -> tuple[float, float]:
        """From where to where it reaches at a height."""
        down = (y - self.y) / self.size
        stem = STALK / 2 if -STEM <= down <= 1 else 0
        fruit = WIDE * sqrt(max(0, 1 - (down / HIGH - 1) ** 2))
        half = max(stem, fruit) * self.size
        return self.x - half, self.x + half


PLUM = Plum(0, 0, 1).path
"""A whole one, where its stem meets the fruit at 0, 0."""
