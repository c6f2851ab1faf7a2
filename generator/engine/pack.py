"""One file that keeps all outputs of one thing made, with a checksum for each part of it.

First comes a head: what is known of the outputs, so that nobody unpacks what need not be written.
Then come the outputs themselves, those that are text packed. Nothing in it is ever run.
"""

from __future__ import annotations

import json
import os
import zlib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from hashlib import blake2b
from pathlib import Path
from typing import BinaryIO

from pydantic_core import from_json

from generator.media.content import Joined, pieces_of, size_of

Fact = str | int | bool | None | list["Fact"] | dict[str, "Fact"]
"""Anything JSON can say."""
_MAGIC = b"plumline 1\n"
_SUM = 16
"""Bytes of a checksum."""
_LENGTH = 8
"""Bytes in which the head's own length is written."""
_PIECE = 1 << 20
"""Bytes in memory at a time: the copy of a lesson holds its film."""
_QUICK = 1
"""Level of zlib: a third of the bytes for a fiftieth of the time a lesson takes to make."""
_PACKED_ALREADY = (".zip", ".imscc", ".png", ".jpg", ".webp", ".gz")


KEPT = ".kept/"
"""Where in a pack lies what other files of the site are made from, and what goes out by itself never."""


@dataclass(frozen=True, slots=True)
class Entry:
    """One file in a pack."""

    path: str
    """From the site's root, with forward slashes."""
    size: int
    """Bytes of the file."""
    sum: str
    """Checksum of what it holds."""
    held: int
    """Bytes it takes in the pack; less than its size where it is packed."""


@dataclass(frozen=True, slots=True)
class Pack:
    """What is kept of one thing made."""

    file: Path
    start: int
    """Where the first output begins in the file, in bytes."""
    entries: tuple[Entry, ...]
    facts: dict[str, Fact]
    """What whoever made it wants to know again."""

    @property
    def published(self) -> tuple[Entry, ...]:
        """What goes out of it."""
        return tuple(one for one in self.entries if not one.path.startswith(KEPT))

    def held(self, path: str) -> bytes:
        """What one output holds, by its path.

        Raises:
            DamagedPackError: it is not there, or does not hold any more what was put into it.
        """
        at = self.start
        for entry in self.entries:
            if entry.path == path:
                try:
                    with self.file.open("rb") as file:
                        file.seek(at)
                        return b"".join(_unpacked(entry, file))
                except OSError as error:
                    raise DamagedPackError(path) from error
            at += entry.held
        raise DamagedPackError(path)

    def contents(self) -> Iterator[tuple[Entry, bytes]]:
        """Each output and what it holds.

        Raises:
            DamagedPackError: it does not hold any more what was put into it.
        """
        for entry, pieces in self.pieces():
            yield entry, b"".join(pieces)

    def pieces(self) -> Iterator[tuple[Entry, Iterator[bytes]]]:
        """Each output and what it holds bit by bit; one is read to its end before the next is asked for.

        Raises:
            DamagedPackError: here or at the end of an output: it does not hold any more what was put into it.
        """
        try:
            file = self.file.open("rb")
        except OSError as error:
            raise DamagedPackError(self.file.name) from error
        with file:
            at = self.start
            for entry in self.entries:
                file.seek(at)
                yield entry, _unpacked(entry, file)
                at += entry.held


class DamagedPackError(Exception):
    """A pack was altered, cut off or is gone; what it held must be made anew."""


def write_pack(
    file: Path, facts: dict[str, Fact], outputs: Iterable[tuple[str, bytes | Joined]]
) -> Pack:
    """Keep outputs by path; the file is there whole or not at all."""
    entries: list[Entry] = []
    bodies: list[bytes | Joined] = []
    for path, content in outputs:
        is_packed = not isinstance(content, bytes) or path.endswith(_PACKED_ALREADY)
        body = content if is_packed else zlib.compress(bytes(content), _QUICK)
        entries.append(Entry(path, size_of(content), _sum_of(content), size_of(body)))
        bodies.append(body)
    told = [[entry.path, entry.size, entry.sum, entry.held] for entry in entries]
    head = json.dumps({"files": told, "facts": facts}, ensure_ascii=False).encode()
    begin = (_MAGIC, _sum(head), len(head).to_bytes(_LENGTH), head)
    growing = file.with_name(f"{file.name}.{os.getpid()}")
    try:
        with growing.open("wb") as target:
            target.writelines(begin)
            for body in bodies:
                target.writelines(pieces_of(body))
        growing.replace(file)
    finally:
        growing.unlink(missing_ok=True)
    return Pack(file, sum(map(len, begin)), tuple(entries), facts)


def read_pack(file: Path) -> Pack | None:
    """The head of a pack; nothing where there is none or it is damaged."""
    try:
        with file.open("rb") as held:
            return _read(file, held)
    except (OSError, ValueError, KeyError, TypeError):
        return None


def _read(file: Path, held: BinaryIO) -> Pack | None:
    begin = held.read(len(_MAGIC) + _SUM + _LENGTH)
    length = int.from_bytes(begin[-_LENGTH:])
    if not begin.startswith(_MAGIC) or length > os.fstat(held.fileno()).st_size:
        return None
    head = held.read(length)
    if _sum(head) != begin[len(_MAGIC) : -_LENGTH]:
        return None
    told = from_json(head)
    entries = tuple(Entry(*one) for one in told["files"])
    return Pack(file, len(begin) + length, entries, told["facts"])


def checksum(content: bytes) -> str:
    """What a file holds, in a word."""
    return blake2b(content, digest_size=_SUM).hexdigest()


def _sum(content: bytes) -> bytes:
    return blake2b(content, digest_size=_SUM).digest()


def _sum_of(held: bytes | Joined) -> str:
    if isinstance(held, bytes):
        return checksum(held)
    whole = blake2b(digest_size=_SUM)
    for piece in held.pieces():
        whole.update(piece)
    return whole.hexdigest()


def _unpacked(entry: Entry, file: BinaryIO) -> Iterator[bytes]:
    """What an output holds, known to be whole only at its end."""
    whole = blake2b(digest_size=_SUM)
    try:
        for piece in _read_pieces(entry, file):
            whole.update(piece)
            yield piece
    except (OSError, zlib.error) as error:
        raise DamagedPackError(entry.path) from error
    if whole.hexdigest() != entry.sum:
        raise DamagedPackError(entry.path)


def _read_pieces(entry: Entry, file: BinaryIO) -> Iterator[bytes]:
    """The bytes of an output, of one that is packed all at once."""
    if not entry.path.endswith(_PACKED_ALREADY):
        yield zlib.decompress(file.read(entry.held))
        return
    rest = entry.held
    while rest and (piece := file.read(min(_PIECE, rest))):
        rest -= len(piece)
        yield piece
