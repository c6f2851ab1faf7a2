"""Places on a figure's drawing, and paths through them."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import cos, dist, radians, sin


@dataclass(frozen=True, slots=True)
class Point:
    """A place on the drawing."""

    x: float
    """Drawing units from the left edge."""

    y: float
    """Drawing units from the top edge."""

    def toward(self, degrees: float, length: float) -> Point:
        """Return the point at a length in a direction (0 down, 90 to the right)."""
        return Point(
            self.x + length * sin(radians(degrees)), self.y + length * cos(radians(degrees))
        )

    def moved(self, x: float, y: float) -> Point:
        """Return the point moved right by x and down by y."""
        return Point(self.x + x, self.y + y)

    def far_from(self, other: Point) -> float:
        """Return how many drawing units lie between two points."""
        return dist((self.x, self.y), (other.x, other.y))

    def on_the_way_to(self, other: Point, share: float) -> Point:
        """Return the point at a share of the straight way to another: 0 is here, 1 is there."""
        return self.moved((other.x - self.x) * share, (other.y - self.y) * share)


Limb = tuple[Point, ...]


def line(points: Iterable[Point], *, closed: bool = False) -> str:
    """Return a path through points, leaving out those that repeat."""
    places = [f"{number(point.x)} {number(point.y)}" for point in points]
    kept = [place for i, place in enumerate(places) if i == 0 or place != places[i - 1]]
    if len(kept) == 1:
        return f"M{kept[0]}h0"
    return "M" + kept[0] + "L" + " ".join(kept[1:]) + "z" * closed


def number(value: float) -> str:
    """Return at most one decimal, without a trailing zero: the bytes of a page count."""
    written = f"{value:.1f}".removesuffix(".0")
    return "0" if written == "-0" else written
