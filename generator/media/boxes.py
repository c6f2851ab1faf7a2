"""The boxes that films are made of: ISO/IEC 14496-12, section 4.2. Only their heads are read here."""

from __future__ import annotations

import struct
from collections.abc import Iterator
from dataclasses import dataclass
from typing import BinaryIO

from generator.media.content import UnfitError

_MOST = 200_000
"""Boxes of a film; two hours in parts of a second each have a tenth of it."""
_CUT_OFF = "is a film that is cut off or damaged", "copy or export it again"


@dataclass(frozen=True, slots=True)
class Box:
    """One box: its kind and where it is, in bytes of the file."""

    kind: bytes
    start: int
    content: int
    """Where its content begins, after its head."""
    end: int


def boxes(file: BinaryIO, start: int, end: int) -> Iterator[Box]:
    """The boxes between two offsets.

    Raises:
        UnfitError: one of them goes on beyond the end, or there are far too many.
    """
    for _ in range(_MOST):
        if end - start < 8:  # a writer may leave a few bytes
            return
        file.seek(start)
        head = file.read(16)
        if len(head) < 8:
            raise UnfitError(*_CUT_OFF)
        length, kind = struct.unpack_from(">I4s", head)
        size = 8
        if length == 1 and len(head) == 16:
            length, size = struct.unpack_from(">Q", head, 8)[0], 16
        length = length or end - start
        if length < size or start + length > end:
            raise UnfitError(*_CUT_OFF)
        yield Box(kind, start, start + size, start + length)
        start += length
    raise UnfitError(*_CUT_OFF)


def inside(file: BinaryIO, box: Box) -> Iterator[Box]:
    """The boxes of one that holds nothing else."""
    return boxes(file, box.content, box.end)


def find(file: BinaryIO, box: Box, *kinds: bytes) -> Box | None:
    """The first box on a path of kinds; nothing where there is none."""
    for kind in kinds:
        found = next((one for one in inside(file, box) if one.kind == kind), None)
        if found is None:
            return None
        box = found
    return box


def held(file: BinaryIO, box: Box, most: int) -> bytes:
    """What a box holds, of a long one its beginning."""
    file.seek(box.content)
    return file.read(min(most, box.end - box.content))
