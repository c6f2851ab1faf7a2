"""Reads what Chromium prints: where ink lies on each sheet, in which color, and how large letters are.

By ISO 32000-1, from memory (status M): objects and streams 7.3, pages 7.7.3, content 8.2 to 8.10, text 9.4. Only what
Chromium writes is read: objects uncompressed, streams by Flate, forms and pictures by the name of their object.
"""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator
from dataclasses import dataclass, replace

Matrix = tuple[float, float, float, float, float, float]
Box = tuple[float, float, float, float]
"""Left, top, right, bottom; in points of PDF from the lower left corner, or in millimetres from the upper left."""
_POINT = 25.4 / 72
_FOOT = 11.5
"""Millimetres at the lower edge in which stamp and number stand."""
_OPERATOR = re.compile(
    rb"<[0-9A-Fa-f]*>|\((?:\\.|[^\\)])*\)|/[^\s/<>\[\]()]+|[\[\]]|[^\s/<>\[\]()]+"
)
_PAINTS = {b"f", b"f*", b"F", b"S", b"s", b"B", b"B*", b"b", b"b*"}


@dataclass(frozen=True, slots=True)
class Ink:
    """One thing that is printed."""

    box: Box
    """Millimetres from the upper left corner of the paper."""
    colour: tuple[float, ...]
    """Red, green and blue from 0 to 1; nothing where a picture has its own."""
    letters: float
    """Size of letters in points; 0 where there are none."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """One printed sheet."""

    width: float
    height: float
    """Millimetres."""
    inks: tuple[Ink, ...]
    """Everything but the stamp and the number at its foot, and nothing that is white."""

    @property
    def filled(self) -> float:
        """Share of its height, between the margins, down to the lowest ink."""
        lowest = max((ink.box[3] for ink in self.inks), default=10)
        return (lowest - 10) / (self.height - 10 - _FOOT)


def printed_sheets(pdf: bytes) -> list[Sheet]:
    """The sheets of a document, in order."""
    found = re.findall(
        rb"/Type /Page\b.*?/MediaBox \[0 0 ([\d.]+) ([\d.]+)\].*?/Contents (\d+) 0 R",
        pdf,
        re.DOTALL,
    )
    return [_sheet(pdf, float(width), float(height), int(at)) for width, height, at in found]


def _sheet(pdf: bytes, width: float, height: float, content: int) -> Sheet:
    start = _State((1, 0, 0, 1, 0, 0), (0, 0, width, height))
    inks = tuple(
        replace(ink, box=_in_millimetres(ink.box, height)) for ink in _inks(pdf, content, start)
    )
    high = height * _POINT
    return Sheet(
        width * _POINT, high, tuple(ink for ink in inks if _is_content(ink, high) and _is_seen(ink))
    )


def _is_content(ink: Ink, height: float) -> bool:
    return ink.box[1] < height - _FOOT


def _is_seen(ink: Ink) -> bool:
    return not ink.colour or min(ink.colour) < 0.98


def _in_millimetres(box: Box, height: float) -> Box:
    left, low, right, high = box
    return (left * _POINT, (height - high) * _POINT, right * _POINT, (height - low) * _POINT)


@dataclass(frozen=True, slots=True)
class _State:
    """What `q` keeps and `Q` brings back."""

    matrix: Matrix
    clip: Box
    fill: tuple[float, ...] = (0, 0, 0)
    stroke: tuple[float, ...] = (0, 0, 0)
    font: float = 0


def _inks(pdf: bytes, number: int, state: _State) -> Iterator[Ink]:
    """What a stream paints, from its first operator to its last."""
    kept: list[_State] = []
    values: list[bytes] = []
    path: list[tuple[float, float]] = []
    text: Matrix = (1, 0, 0, 1, 0, 0)
    for token in _OPERATOR.findall(_stream(pdf, number)):
        if re.match(rb"[-+.\d</(\[\]]", token):
            values.append(token)
            continue
        match token:
            case b"q":
                kept.append(state)
            case b"Q":
                state = kept.pop()
            case b"Tm":
                text = _six(values)
            case b"Td":
                text = _times((1, 0, 0, 1, *_numbers(values)[:2]), text)  # type: ignore[arg-type]  # two numbers
            case b"Tj" | b"TJ":
                yield from _letters(state, text)
            case b"re" | b"m" | b"l" | b"c" | b"v" | b"y":
                path += _points(token, _numbers(values), state.matrix)
            case b"W" | b"W*":
                state = replace(state, clip=_shared(state.clip, _around(path)))
            case b"Do":
                yield from _placed(pdf, values[-1], state)
            case _ if token in _PAINTS:
                yield from _painted(token, path, state)
            case _:
                state = _changed(state, token, values)
        values = []
        if token == b"n" or token in _PAINTS:
            path = []


def _changed(state: _State, token: bytes, values: list[bytes]) -> _State:
    match token:
        case b"cm":
            return replace(state, matrix=_times(_six(values), state.matrix))
        case b"rg":
            return replace(state, fill=tuple(_numbers(values)))
        case b"RG":
            return replace(state, stroke=tuple(_numbers(values)))
        case b"scn":
            return replace(state, fill=())
        case b"Tf":
            return replace(state, font=_numbers(values[1:])[0])
    return state


def _placed(pdf: bytes, name: bytes, state: _State) -> Iterator[Ink]:
    """A picture fills the unit square; a form is drawn by its own stream."""
    number = int(re.sub(rb"\D", b"", name))
    if b"/Subtype /Image" in _head(pdf, number):
        corners = [_moved(corner, state.matrix) for corner in ((0, 0), (1, 0), (0, 1), (1, 1))]
        yield from _within(_around(corners), (), state, 0)
    else:
        yield from _inks(pdf, number, state)


def _painted(token: bytes, path: list[tuple[float, float]], state: _State) -> Iterator[Ink]:
    colour = state.stroke if token in (b"S", b"s") else state.fill
    if path:
        yield from _within(_around(path), colour, state, 0)


def _letters(state: _State, text: Matrix) -> Iterator[Ink]:
    """Where a line of letters begins: its foot, and as high as its letters are."""
    matrix = _times(text, state.matrix)
    high = state.font * (matrix[2] ** 2 + matrix[3] ** 2) ** 0.5
    left, low = _moved((0, 0), matrix)
    yield from _within(
        (left, low, left + high / 4, low + high * 0.7), state.fill, state, round(high, 2)
    )


def _within(box: Box, colour: tuple[float, ...], state: _State, letters: float) -> Iterator[Ink]:
    shared = _shared(box, state.clip)
    if shared[0] <= shared[2] and shared[1] <= shared[3]:
        yield Ink(shared, colour, letters)


def _points(token: bytes, n: list[float], matrix: Matrix) -> list[tuple[float, float]]:
    if token == b"re":
        left, top, wide, high = n[:4]
        n = [left, top, left + wide, top, left, top + high, left + wide, top + high]
    return [_moved((n[at], n[at + 1]), matrix) for at in range(0, len(n) - 1, 2)]


def _around(points: list[tuple[float, float]]) -> Box:
    across, up = [x for x, _ in points], [y for _, y in points]
    return (min(across), min(up), max(across), max(up))


def _shared(one: Box, other: Box) -> Box:
    return (
        max(one[0], other[0]),
        max(one[1], other[1]),
        min(one[2], other[2]),
        min(one[3], other[3]),
    )


def _moved(point: tuple[float, float], by: Matrix) -> tuple[float, float]:
    x, y = point
    return (by[0] * x + by[2] * y + by[4], by[1] * x + by[3] * y + by[5])


def _times(first: Matrix, second: Matrix) -> Matrix:
    a, b, c, d, e, f = first
    across, up = _moved((e, f), second)
    p, q, r, s = second[:4]
    return (a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s, across, up)


def _six(values: list[bytes]) -> Matrix:
    a, b, c, d, e, f = _numbers(values)
    return (a, b, c, d, e, f)


def _numbers(values: list[bytes]) -> list[float]:
    return [float(one) for one in values if re.fullmatch(rb"[-+.\d]+", one)]


def _head(pdf: bytes, number: int) -> bytes:
    found = re.search(rb"(?:^|\n)%d 0 obj\n(.*?)(?:stream\n|endobj)" % number, pdf, re.DOTALL)
    assert found, number
    return found[1]


def _stream(pdf: bytes, number: int) -> bytes:
    found = re.search(rb"(?:^|\n)%d 0 obj\n<<.*?>> stream\n" % number, pdf, re.DOTALL)
    assert found, number
    content = pdf[found.end() :]
    return (
        zlib.decompressobj().decompress(content)
        if b"Flate" in found[0]
        else content.split(b"endstream")[0]
    )
