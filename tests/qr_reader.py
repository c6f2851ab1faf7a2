"""Reads an undamaged QR code of medium error correction or the next better, from the SVG that shows it.

Versions 1 to 6, by ISO/IEC 18004:2015 (from memory, status M; a reader of another make agreed): format information 7.9, masks 7.8.2, placement 7.7.3,
blocks table 9, byte mode 7.4.5.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

_BORDER = 2
_M, _Q = 0b00, 0b11
_BLOCKS = {
    _M: {1: (1, 16), 2: (1, 28), 3: (1, 44), 4: (2, 32), 5: (2, 43), 6: (4, 27)},
    _Q: {1: (1, 13), 2: (1, 22), 3: (2, 17), 4: (2, 24)},
}
"""By level and version: blocks, and data codewords of each."""
_MASKS: tuple[Callable[[int, int], int], ...] = (
    lambda i, j: (i + j) % 2,
    lambda i, _: i % 2,
    lambda _, j: j % 3,
    lambda i, j: (i + j) % 3,
    lambda i, j: (i // 2 + j // 3) % 2,
    lambda i, j: i * j % 2 + i * j % 3,
    lambda i, j: (i * j % 2 + i * j % 3) % 2,
    lambda i, j: ((i + j) % 2 + i * j % 3) % 2,
)
"""What is nothing where a mask turns a module over."""
Dark = set[tuple[int, int]]


def read_code(svg: str) -> str:
    """The text of the code."""
    return read_squares(*_modules(svg))


def read_squares(size: int, dark: Dark) -> str:
    """The text of a code of so many squares a side, its dark ones given by row and column."""
    level, mask = _format(dark)
    bits = [
        ((row, column) in dark) != (_MASKS[mask](row, column) == 0)
        for row, column in _path(size)
        if not _is_pattern(row, column, size)
    ]
    words = [_number(bits[at : at + 8]) for at in range(0, len(bits) - 7, 8)]
    blocks, each = _BLOCKS[level][(size - 17) // 4]
    data = [words[place * blocks + block] for block in range(blocks) for place in range(each)]
    stream = [bool(word >> (7 - bit) & 1) for word in data for bit in range(8)]
    assert _number(stream[:4]) == 0b0100, "it is not in byte mode"
    length = _number(stream[4:12])
    text = (_number(stream[12 + 8 * at : 20 + 8 * at]) for at in range(length))
    return bytes(text).decode()


def _modules(svg: str) -> tuple[int, Dark]:
    """Modules on a side, and the dark ones by row and column: the path is drawn in lines of one module."""
    box, path = re.search(r'viewBox="0 0 (\d+) \d+"', svg), re.search(r'\bd="([^"]+)"', svg)
    assert box
    assert path
    dark: Dark = set()
    x = y = 0.0
    for command, rest in re.findall(r"([Mmh])([-\d. ]+)", path[1]):
        numbers = [float(one) for one in rest.split()]
        if command == "h":
            dark |= {(int(y) - _BORDER, int(x) + at - _BORDER) for at in range(int(numbers[0]))}
            x += numbers[0]
        else:
            x, y = numbers if command == "M" else (x + numbers[0], y + numbers[1])
    return int(box[1]) - 2 * _BORDER, dark


def _format(dark: Dark) -> tuple[int, int]:
    """Level of error correction, and mask."""
    row = [(8, column) for column in (0, 1, 2, 3, 4, 5, 7, 8)]
    places = row + [(line, 8) for line in (7, 5, 4, 3, 2, 1, 0)]
    told = _number([place in dark for place in places]) ^ 0b101010000010010
    return told >> 13, told >> 10 & 7


def _path(size: int) -> Iterator[tuple[int, int]]:
    """Modules in the order of the data: up and down, two columns at a time, around the timing pattern."""
    up = True
    for right in (*range(size - 1, 6, -2), 5, 3, 1):
        for row in range(size - 1, -1, -1) if up else range(size):
            yield row, right
            yield row, right - 1
        up = not up


def _is_pattern(row: int, column: int, size: int) -> bool:
    """Whether a module is no data: finders with the format beside them, timing, alignment."""
    near, far = 9, size - 8
    finder = (row < near and (column < near or column >= far)) or (row >= far and column < near)
    last = size - 7
    alignment = size > 21 and abs(row - last) <= 2 and abs(column - last) <= 2
    return finder or alignment or 6 in (row, column)


def _number(bits: list[bool]) -> int:
    return int("".join("1" if bit else "0" for bit in bits), 2)
