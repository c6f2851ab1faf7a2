"""The drawing as PNG, for places that show no SVG; written here, for nothing else is needed for filled shapes.

A dot at the edge of a shape is mixed of its color and the ground's, in as many steps as a palette
has room for. Chunks and filters are those of the PNG specification (W3C, third edition, 5 and 9).
"""

from __future__ import annotations

import struct
import zlib
from collections.abc import Iterator, Mapping, Sequence
from math import ceil, floor

from generator.present.pictures.plums.drawing import Drawing, leaf, plum
from generator.present.pictures.plums.shapes import Shape

_STEPS = 7
"""Mixtures of a color with the ground, the whole color among them."""
_FINE = 4
"""Lines that are looked at for one line of dots."""
_Line = tuple[float, float]


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
    packed = zlib.compress(b"".join(b"\0" + row for row in rows), 9)
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


def _fill(rows: list[bytearray], shape: Shape, base: int, at: tuple[float, float, float]) -> None:
    """Lay a shape over what is there, so far to the right and down, and so many times as large."""
    right, down, scale = at
    begin, end = floor((shape.top + down) * scale), ceil((shape.bottom + down) * scale)
    for y in range(max(0, begin), min(len(rows), end)):
        heights = ((y + (fine + 0.5) / _FINE) / scale - down for fine in range(_FINE))
        lines = [
            ((x0 + right) * scale, (x1 + right) * scale)
            for x0, x1 in map(shape.across, heights)
            if x0 < x1
        ]
        if lines:
            _lay(rows[y], lines, base)


def _lay(row: bytearray, lines: list[_Line], base: int) -> None:
    """One line of dots: its inside at once, its edges dot by dot."""
    begin, end = floor(min(x0 for x0, _ in lines)), ceil(max(x1 for _, x1 in lines))
    inside, outside = ceil(max(x0 for x0, _ in lines)), floor(min(x1 for _, x1 in lines))
    if len(lines) < _FINE or inside >= outside:
        inside = outside = end
    else:
        row[inside:outside] = bytes([base + _STEPS]) * (outside - inside)
    for x in (*range(begin, inside), *range(outside, end)):
        covered = sum(max(0.0, min(x1, x + 1) - max(x0, x)) for x0, x1 in lines) / _FINE
        row[x] = _mixed(row[x], base, floor(covered * _STEPS + 0.5))


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
