"""A zip file from contents that may be packed already: what many copies share is packed once.

The layout is that of PKWARE's APPNOTE.TXT 6.3.10, sections 4.3.7 (local header), 4.3.12 (central
directory) and 4.3.16 (its end); the numbers are little-endian, as section 4.1.9 has them.
"""

from __future__ import annotations

import struct
import zlib
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from generator.media.content import Content, Joined, pieces_of, size_of

_STORED, _DEFLATED = 0, 8
_VERSION = 20  # 2.0: deflate and folders, section 4.4.3.2
_BY_UNIX = 3 << 8  # section 4.4.2.2: whatever machine this is, so that modes mean the same
_UTF8 = 0x800  # bit 11 of section 4.4.4
_READABLE = 0o100644 << 16  # a plain file that all may read, in the host's half of section 4.4.15
_EARLIEST = (1 << 5 | 1) << 16
"""1 January 1980, 0:00: the first time an MS-DOS date can say (section 4.4.6), for files without one."""
_LARGEST = 0xFFFF_FFFF
_LOCAL = struct.Struct("<4sHHHIIIIHH")
_CENTRAL = struct.Struct("<4sHHHHIIIIHHHHHII")
_END = struct.Struct("<4sHHHHIIH")


@dataclass(frozen=True, slots=True)
class Packed:
    """What a file holds, as it lies in a zip file."""

    method: int
    crc: int
    size: int
    """Bytes of the file itself."""
    data: bytes | Content

    def fields(self) -> tuple[int, int, int, int]:
        """What both headers say of it, from its time on."""
        return _EARLIEST, self.crc, size_of(self.data), self.size


def deflated(content: bytes) -> Packed:
    """A content that becomes smaller by packing (RFC 1951)."""
    packer = zlib.compressobj(wbits=-zlib.MAX_WBITS)
    data = packer.compress(content) + packer.flush()
    return Packed(_DEFLATED, zlib.crc32(content), len(content), data)


@lru_cache(maxsize=512)
def deflated_once(content: bytes) -> Packed:
    """The same for what is in many zip files: packed for the first of them and remembered."""
    return deflated(content)


def stored(content: bytes | Content) -> Packed:
    """A content that is small already, such as a film; it is read bit by bit.

    Raises:
        OSError: it cannot be read.
    """
    crc = 0
    for piece in pieces_of(content):
        crc = zlib.crc32(piece, crc)
    return Packed(_STORED, crc, size_of(content), content)


def zip_file(entries: Iterable[tuple[str, Packed]]) -> Joined:
    """The zip file of these names and contents, in their order; always the same bytes.

    Raises:
        ValueError: it would be larger than 4 GiB, the most this format can say.
    """
    parts: list[bytes | Content] = []
    directory: list[bytes] = []
    at = 0
    for name, packed in entries:
        encoded = name.encode()
        method, fields = packed.method, packed.fields()
        local = _LOCAL.pack(b"PK\3\4", _VERSION, _UTF8, method, *fields, len(encoded), 0)
        directory += [
            _CENTRAL.pack(
                b"PK\1\2", _VERSION | _BY_UNIX, _VERSION, _UTF8, method, *fields,
                len(encoded), 0, 0, 0, 0, _READABLE, at,
            ),
            encoded,
        ]  # fmt: skip
        parts += [local, encoded, packed.data]
        at += len(local) + len(encoded) + size_of(packed.data)
        if at > _LARGEST:
            raise ValueError(f"{name}: a zip file holds no more than 4 GiB")
    listed = b"".join(directory)
    number = len(directory) // 2
    end = _END.pack(b"PK\5\6", 0, 0, number, number, len(listed), at, 0)
    return Joined((*parts, listed, end))
