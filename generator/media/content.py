"""What a published file holds: parts of an educator's own file, and bytes in the place of others."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import BinaryIO

from generator.model.personal import Personal

_PIECE = 1 << 20
"""Bytes in memory at a time: a film may have gigabytes."""


@dataclass(frozen=True, slots=True)
class Kept:
    """Bytes that go out as they are."""

    start: int
    end: int
    """Offsets in the file."""


@dataclass(frozen=True, slots=True)
class Blank:
    """Bytes that go out as zeros, so that what follows stays where it was."""

    size: int


Part = Kept | Blank | bytes


@dataclass(frozen=True, slots=True)
class Content:
    """A file as it is published; the educator's own stays as it is."""

    file: Path
    parts: tuple[Part, ...] = field(repr=False)
    told: frozenset[Personal] = frozenset()
    """What was found in the parts that stay at home."""

    @property
    def size(self) -> int:
        """Bytes that go out."""
        return sum(map(_size, self.parts))

    def pieces(self) -> Iterator[bytes]:
        """What goes out, no more of it in memory than a piece.

        Raises:
            OSError: the file is gone or has become shorter since it was looked at.
        """
        with self.file.open("rb") as file:
            for part in self.parts:
                match part:
                    case bytes():
                        yield part
                    case Blank(size):
                        for start in range(0, size, _PIECE):
                            yield bytes(min(_PIECE, size - start))
                    case Kept(start, end):
                        yield from _between(file, start, end)


@dataclass(frozen=True, slots=True)
class Joined:
    """A file made of others, such as a zip file with a film in it; what is large of it is nowhere in memory."""

    parts: tuple[bytes | Content, ...] = field(repr=False)

    @property
    def size(self) -> int:
        """Bytes of all parts."""
        return sum(map(size_of, self.parts))

    def pieces(self) -> Iterator[bytes]:
        """What it holds, part after part.

        Raises:
            OSError: as a part does.
        """
        for part in self.parts:
            yield from pieces_of(part)

    def __bytes__(self) -> bytes:
        """All of it, where it is known to be small."""
        return b"".join(self.pieces())


Held = bytes | Content | Joined
"""What a file holds: in memory, or to be read bit by bit."""


def size_of(held: Held) -> int:
    """Bytes of a file."""
    return len(held) if isinstance(held, bytes) else held.size


def pieces_of(held: Held) -> Iterator[bytes]:
    """What a file holds, bit by bit.

    Raises:
        OSError: it cannot be read any more.
    """
    return iter((held,)) if isinstance(held, bytes) else held.pieces()


def _size(part: Part) -> int:
    match part:
        case bytes():
            return len(part)
        case Blank(size):
            return size
        case Kept(start, end):
            return end - start


def _between(file: BinaryIO, start: int, end: int) -> Iterator[bytes]:
    file.seek(start)
    while start < end:
        piece = file.read(min(_PIECE, end - start))
        if not piece:
            raise OSError(5, "the file became shorter while it was read", file.name)
        start += len(piece)
        yield piece


class UnfitError(Exception):
    """A file is not what its name says, or no browser shows it."""

    def __init__(self, what: str, hint: str) -> None:
        """Carry a sentence that begins after the file's name, and the way out."""
        super().__init__(what)
        self.what, self.hint = what, hint
