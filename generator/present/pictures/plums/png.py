"""The drawing as PNG, for places that show no SVG; written here, for nothing else is needed for filled shapes.

A dot at the edge of a shape is mixed of its color and the ground's, in as many steps as a palette
has room for. Chunks and filters are those of the PNG specification (W3C, third edition, 5 and 9).
"""

from __future__ import annotations

import struct
import zlib
from collections.abc import Iterator, Mapping, Sequence
from functools import lru_cache
from math import ceil, floor

from generator.present.pictures.plums.drawing import Drawing, leaf, plum
from generator.present.pictures.plums.shapes import Bar, Shape

_STEPS = 7
"""Mixtures of a color with the ground, the whole color among them."""
_FINE = 4
"""Lines that are looked at for one line of dots."""
_Line = tuple[float, float]
_At = tuple[float, float, float]
"""How far to the right and down a shape is moved, in units, and then how many times as large it is."""
_Run = tuple[int, int, bytes]
"""Dots of a line from one to before another, and what each dot of the palette becomes there."""


def png(drawing: Drawing, colours: Mapping[str, str], size: tuple[int, int], scale: float) -> bytes:
    """A picture with a palette, the drawing in its middle; the same arguments give the same bytes.

    Args:
        drawing: what hangs where.
        colours: by name, ``#`` and six hexadecimal digits; the first is the ground's.
        size: width and height in dots.
        scale: dots for one unit of the drawing.
    """
    width, height = size
    left = (width / scale - drawing.frame.width) / 2
    above = (height / scale - drawing.frame.height) / 2
    rows = [bytearray(width) for _ in range(height)]
    bases = {name: (number - 1) * _STEPS for number, name in enumerate(colours)}
    for name, shape, x, y in _shapes(drawing):
        _fill(rows, shape, bases[name], (x + left, y + above, scale))
    header = struct.pack(">IIBBBBB", width, height, 8, 3, 0, 0, 0)
    palette = b"".join(_mixtures([_dots(colour) for colour in colours.values()]))
    packed = zlib.compress(b"".join(b"\0" + row for row in rows))
    chunks = ((b"IHDR", header), (b"PLTE", palette), (b"IDAT", packed), (b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(_chunk(*one) for one in chunks)


def _shapes(drawing: Drawing) -> Iterator[tuple[str, Shape, float, float]]:
    """Every shape with its color and where it stands, what lies behind first."""
    yield "thread", drawing.line, 0, 0
    for place in drawing.places:
        yield "thread", drawing.thread(place), 0, 0
        yield "plum", drawing.knot(place), 0, 0
        grown = () if place.side is None else leaf(place.side, drawing.size)
        for part in (*plum(drawing.size), *grown):
            for shape in part.shapes:
                yield part.colour, shape, place.x, drawing.frame.line + place.drop


def _fill(rows: list[bytearray], shape: Shape, base: int, at: _At) -> None:
    """Lay a shape over what is there."""
    _, down, scale = at
    top, bottom = (shape.top + down) * scale, (shape.bottom + down) * scale
    alike = range(max(0, ceil(top)) + 1, floor(bottom)) if isinstance(shape, Bar) else ()
    runs: tuple[_Run, ...] = ()
    for y in range(max(0, floor(top)), min(len(rows), ceil(bottom))):
        if y not in alike:  # inside of a bar the line above serves
            runs = tuple(_runs(_lines(shape, y, at), base))
        for start, stop, over in runs:
            rows[y][start:stop] = rows[y][start:stop].translate(over)


def _lines(shape: Shape, y: int, at: _At) -> list[_Line]:
    """From where to where a shape reaches in each line that a line of dots is made of."""
    right, down, scale = at
    heights = [(y + (fine + 0.5) / _FINE) / scale - down for fine in range(_FINE)]
    return [
        ((x0 + right) * scale, (x1 + right) * scale)
        for x0, x1 in map(shape.across, heights)
        if x0 < x1
    ]


def _runs(lines: list[_Line], base: int) -> Iterator[_Run]:
    """One line of dots: its inside at once, its edges dot by dot."""
    if not lines:
        return
    lefts, rights = zip(*lines, strict=True)
    begin, end = floor(min(lefts)), ceil(max(rights))
    inside, outside = ceil(max(lefts)), floor(min(rights))
    if inside < outside:
        yield inside, outside, _over(base, _step(len(lines)))
    else:
        inside = outside = end
    for x in (*range(begin, inside), *range(outside, end)):
        yield x, x + 1, _over(base, _step(_covered(x, lines)))


def _covered(x: int, lines: list[_Line]) -> float:
    """How much of its lines a dot has covered."""
    covered = 0.0
    for x0, x1 in lines:
        begin = x0 if x0 > x else x  # noqa: FURB136  # calls take longer, and most time goes here
        end = x1 if x1 < x + 1 else x + 1  # noqa: FURB136  # as above
        if begin < end:
            covered += end - begin
    return covered


def _step(covered: float) -> int:
    """The mixture for so many covered lines of a dot, 0 for the ground alone."""
    return floor(covered / _FINE * _STEPS + 0.5)


@lru_cache(maxsize=64)  # as many as there are mixtures in the palette
def _over(base: int, step: int) -> bytes:
    """What each dot of a palette, which has room for 256, becomes below a mixture."""
    return bytes(_mixed(dot, base, step) for dot in range(256))


def _mixed(dot: int, base: int, step: int) -> int:
    """A dot at an edge: mixed where the ground is below or above, else of the color there is more of."""
    if step and base >= 0 and not dot:
        return base + step
    if base < 0:
        colour, above = divmod(dot - 1, _STEPS)
        return colour * _STEPS + above + 1 - step if dot and above + 1 > step else 0
    return base + _STEPS if 2 * step > _STEPS else dot


def _mixtures(colours: Sequence[bytes]) -> Iterator[bytes]:
    """The palette: the ground, then each other color's mixtures with it from faint to whole."""
    ground, *others = colours
    yield ground
    for colour in others:
        for step in range(1, _STEPS + 1):
            yield bytes(
                below + floor((above - below) * step / _STEPS + 0.5)
                for below, above in zip(ground, colour, strict=True)
            )


def _dots(colour: str) -> bytes:
    return bytes.fromhex(colour.removeprefix("#"))


def _chunk(name: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))
