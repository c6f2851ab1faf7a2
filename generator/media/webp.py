"""WebP pictures: RFC 9649 section 2.3 (RIFF) to 2.7 (extended file format)."""

from __future__ import annotations

import struct
from collections.abc import Iterator

from generator.media.content import UnfitError
from generator.media.exif import orientation_only, personal_in_exif, personal_in_xmp
from generator.model.personal import Personal

_SHOWN = {b"VP8 ", b"VP8L", b"VP8X", b"ALPH", b"ANIM", b"ANMF", b"ICCP"}
_PICTURES = {b"VP8 ", b"VP8L", b"ANMF"}
_HAS_EXIF, _HAS_XMP = 0x08, 0x04
"""Bits of the first byte of VP8X."""


def clean_webp(data: bytes) -> tuple[bytes, set[Personal]]:
    """The picture without its notes, and what they told of people.

    Raises:
        UnfitError: it is no whole WebP.
    """
    if data[:4] != b"RIFF" or data[8:12] != b"WEBP":
        raise UnfitError("is no WebP picture, whatever its name says", "save it again as WebP")
    told: set[Personal] = set()
    kept: dict[int, tuple[bytes, bytes]] = {}
    upright = b""
    for number, (kind, content) in enumerate(_chunks(data)):
        if kind in _SHOWN:
            kept[number] = kind, content
        elif kind == b"EXIF":
            tiff = content.removeprefix(b"Exif\0\0")
            told.update(personal_in_exif(tiff))
            upright = orientation_only(tiff)
        elif kind == b"XMP ":
            told.update(personal_in_xmp(content))
    if not any(kind in _PICTURES for kind, _ in kept.values()):
        raise UnfitError("is a WebP picture that is cut off or damaged", "save it again")
    chunks = [_chunk(kind, _flagged(kind, content, upright)) for kind, content in kept.values()]
    body = b"WEBP" + b"".join(chunks) + (_chunk(b"EXIF", upright) if upright else b"")
    return b"RIFF" + struct.pack("<I", len(body)) + body, told


def _flagged(kind: bytes, content: bytes, upright: bytes) -> bytes:
    """The head of an extended file says which notes there are."""
    if kind != b"VP8X" or not content:
        return content
    flags = content[0] & ~(_HAS_EXIF | _HAS_XMP) | (_HAS_EXIF if upright else 0)
    return bytes([flags]) + content[1:]


def _chunks(data: bytes) -> Iterator[tuple[bytes, bytes]]:
    """Kind and content of each chunk; a chunk of odd length has one byte more."""
    end = min(len(data), 8 + struct.unpack_from("<I", data, 4)[0])
    at = 12
    while at + 8 <= end:
        kind, length = struct.unpack_from("<4sI", data, at)
        if at + 8 + length > end:
            raise UnfitError("is a WebP picture that is cut off or damaged", "save it again")
        yield kind, data[at + 8 : at + 8 + length]
        at += 8 + length + length % 2


def _chunk(kind: bytes, content: bytes) -> bytes:
    return kind + struct.pack("<I", len(content)) + content + bytes(len(content) % 2)
