"""Gaps hanging as plums, in shapes: under one line a thread for each row, as long as its gap.

A gap of 0 hangs at the line. The leaf points to the side that holds more: left for the first, right
for the second; nobody has one where both are even. Its dots or lines say the same in grey.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from generator.present.pictures.plums.hung import Hung
from generator.present.pictures.plums.plum import Plum
from generator.present.pictures.plums.shapes import Bar, Leaf, Round, Shape, Slant

EDGE = 16
"""Units from an edge of the picture to the line, left and right."""
_THREAD, KNOT = 3, 5
"""Units: how wide a thread is, and half of how wide a knot."""
_TIP, _RISE, _BEND = 24, 7, 16
"""Units: how far a leaf reaches to its side and up, and how it is bent."""
SIDES = ("first", "second")
"""What the styles call the two sides."""
_ROOM = 48
"""Units that a plum needs from side to side, leaf and all; where there is less, it is drawn smaller."""


@dataclass(frozen=True, slots=True)
class Frame:
    """A picture's size, in units, and where the line is in it."""

    width: int
    height: int
    line: int
    """From the top."""
    longest: int
    """Of the longest thread: what the plum leaves of the height."""


COVER = Frame(320, 180, line=26, longest=118)
"""On a wide screen, and in the picture of a shared link."""
POSTER = Frame(320, 180, line=20, longest=80)
"""For a film, whose controls lie over the lowest part."""
NUMBERED = Frame(320, 200, line=26, longest=118)
"""With room for a number below each plum."""
FLAT = Frame(320, 100, line=14, longest=50)
"""For a phone's first screen, and for the head of a sheet."""


@dataclass(frozen=True, slots=True)
class Part:
    """Shapes of one color, named as the styles name it."""

    colour: str
    shapes: tuple[Shape, ...]


@dataclass(frozen=True, slots=True)
class Place:
    """Where one gap hangs."""

    x: float
    drop: float
    """Units from the line to the plum."""
    side: int | None
    """Which side its leaf points to: 0 for left, 1 for right, or it has none."""


@dataclass(frozen=True, slots=True)
class Drawing:
    """Threads from one line, each with a knot where it is tied and a plum at its end."""

    frame: Frame
    size: float
    """Of the plums, 1 for whole ones."""
    places: tuple[Place, ...]
    """Side by side along the line, their threads in proportion."""

    @property
    def line(self) -> Shape:
        """What everything hangs from."""
        half = _THREAD / 2
        return Bar(EDGE, self.frame.line - half, self.frame.width - EDGE, self.frame.line + half)

    def thread(self, place: Place) -> Shape:
        """From the line to the plum."""
        half, line = _THREAD / 2, self.frame.line
        return Bar(place.x - half, line, place.x + half, line + place.drop)

    def knot(self, place: Place) -> Shape:
        """What ties a thread to the line."""
        return Round(place.x, self.frame.line, KNOT, KNOT)


def drawn(rows: Sequence[Hung], frame: Frame) -> Drawing:
    """Where the gaps hang in a picture."""
    step = (frame.width - 2 * EDGE) / len(rows)
    return Drawing(
        frame,
        size=min(1, step / _ROOM),
        places=tuple(
            Place(EDGE + step * (at + 0.5), float(row.share * frame.longest), row.side)
            for at, row in enumerate(rows)
        ),
    )


def plum(size: float) -> tuple[Part, ...]:
    """A plum, the end of its thread at 0, 0; what lies behind first."""
    return (
        Part("plum", (Plum(0, 0, size),)),
        Part("thread", (Round(-6 * size, 16 * size, 1.4 * size, 5 * size),)),
    )


def leaf(side: int, size: float) -> tuple[Part, ...]:
    """The leaf of a plum at the same place, left for the first side and right for the second."""
    way = 1 if side else -1
    return (
        Part(SIDES[side], (Leaf(0, 0, way * _TIP * size, -_RISE * size, _BEND * size),)),
        Part("wash", tuple(_mark(side, along, size) for along in (0.3, 0.52, 0.74))),
    )


def _mark(side: int, along: float, size: float) -> Shape:
    """On a leaf to the left dots, on one to the right lines, as everywhere for the two sides."""
    x, y = _TIP * along * size, -_RISE * along * size
    if side == 0:
        return Round(-x, y, 1.7 * size, 1.7 * size)
    return Slant(x - 2.4 * size, y - 3.6 * size, y + 3.6 * size, 1.6 * size, 3.2 * size)
