"""The few shapes that the drawing is made of, each as a path of SVG and as what it covers of a line of dots."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import hypot, sqrt
from typing import Protocol


class Shape(Protocol):
    """A filled shape, in units of the drawing."""

    @property
    def path(self) -> str:
        """As SVG writes it."""

    @property
    def top(self) -> float:
        """No part of it is higher."""

    @property
    def bottom(self) -> float:
        """No part of it is lower."""

    def across(self, y: float) -> tuple[float, float]:
        """From where to where it reaches at a height; from a point to itself where it does not."""


@dataclass(frozen=True, slots=True)
class Bar:
    """A thread or the line: a rectangle."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def path(self) -> str:
        """As SVG writes it."""
        return f"M{length(self.left)} {length(self.top)}H{length(self.right)}V{length(self.bottom)}H{length(self.left)}z"

    def across(self, y: float) -> tuple[float, float]:
        """From where to where it reaches at a height."""
        return (self.left, self.right) if self.top <= y <= self.bottom else (0, 0)


@dataclass(frozen=True, slots=True)
class Round:
    """A knot, a plum, a dot: an ellipse."""

    x: float
    y: float
    wide: float
    """Half of its width."""
    high: float
    """Half of its height."""

    @property
    def path(self) -> str:
        """As SVG writes it."""
        arc = f"a{length(self.wide)} {length(self.high)} 0 1 1-.01 0z"  # all around, but for a hair
        return f"M{length(self.x)} {length(self.top)}{arc}"

    @property
    def top(self) -> float:
        """No part of it is higher."""
        return self.y - self.high

    @property
    def bottom(self) -> float:
        """No part of it is lower."""
        return self.y + self.high

    def across(self, y: float) -> tuple[float, float]:
        """From where to where it reaches at a height."""
        half = self.wide * sqrt(max(0, 1 - ((y - self.y) / self.high) ** 2))
        return self.x - half, self.x + half


@dataclass(frozen=True, slots=True)
class Leaf:
    """What two equal circles share, from its stalk to its tip."""

    x: float
    y: float
    """Its stalk."""
    dx: float
    dy: float
    """From the stalk to the tip."""
    bend: float
    """Radius of both circles."""

    @property
    def path(self) -> str:
        """As SVG writes it."""
        arc = f"a{length(self.bend)} {length(self.bend)} 0 0 1 "
        return f"M{length(self.x)} {length(self.y)}{arc}{length(self.dx)} {length(self.dy)}{arc}{length(-self.dx)} {length(-self.dy)}z"

    @property
    def top(self) -> float:
        """No part of it is higher."""
        return min(self.y, self.y + self.dy) - self.bend / 2

    @property
    def bottom(self) -> float:
        """No part of it is lower."""
        return max(self.y, self.y + self.dy) + self.bend / 2

    def across(self, y: float) -> tuple[float, float]:
        """From where to where it reaches at a height."""
        one, other = (circle.across(y) for circle in _circles(self))
        left, right = max(one[0], other[0]), min(one[1], other[1])
        return (left, right) if left < right else (0, 0)


@lru_cache(maxsize=64)  # asked for at every height
def _circles(leaf: Leaf) -> tuple[Round, Round]:
    chord = hypot(leaf.dx, leaf.dy)
    off = sqrt(leaf.bend**2 - chord**2 / 4) / chord
    x, y = leaf.x + leaf.dx / 2, leaf.y + leaf.dy / 2
    one = Round(x - leaf.dy * off, y + leaf.dx * off, leaf.bend, leaf.bend)
    return one, Round(x + leaf.dy * off, y - leaf.dx * off, leaf.bend, leaf.bend)


@dataclass(frozen=True, slots=True)
class Slant:
    """A line across a leaf: as wide at every height, and leaning."""

    x: float
    """Its left edge where it begins."""
    top: float
    bottom: float
    wide: float
    leans: float
    """How far to the right it is lower down."""

    @property
    def path(self) -> str:
        """As SVG writes it."""
        high = self.bottom - self.top
        return f"M{length(self.x)} {length(self.top)}h{length(self.wide)}l{length(self.leans)} {length(high)}h{length(-self.wide)}z"

    def across(self, y: float) -> tuple[float, float]:
        """From where to where it reaches at a height."""
        if not self.top <= y <= self.bottom:
            return 0, 0
        left = self.x + self.leans * (y - self.top) / (self.bottom - self.top)
        return left, left + self.wide


def length(value: float) -> str:
    """A length with no more than two places, and no needless zeros."""
    written = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if written == "-0" else written
