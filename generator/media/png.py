"""PNG pictures: W3C PNG specification, third edition, sections 5.2 (signature), 5.3 (chunks) and 11."""

from __future__ import annotations

import struct
import zlib
from collections.abc import Iterator

from generator.media.content import UnfitError
from generator.media.exif import orientation_only, personal_in_exif, personal_in_xmp
from generator.model.personal import Personal

_SIGNATURE = b"\x89PNG\r\n\x1a\n"
_SHOWN = frozenset(
    b"IHDR PLTE IDAT IEND tRNS cHRM gAMA iCCP sBIT sRGB cICP mDCV cLLI bKGD hIST pHYs sPLT acTL fcTL fdAT".split()
)
"""Chunks that a picture is drawn by; every other goes."""
_NAMES = (b"Author\0", b"Copyright\0", b"Artist\0", b"Source\0")
_XMP = b"XML:com.adobe.xmp\0"


def clean_png(data: bytes) -> tuple[bytes, set[Personal]]:
    """The picture without its notes, and what they told of people.

    Raises:
        UnfitError: it is no whole PNG.
    """
    if not data.startswith(_SIGNATURE + b"\0\0\0\rIHDR"):
        raise UnfitError("is no PNG picture, whatever its name says", "save it again as PNG")
    told: set[Personal] = set()
    kept = [_SIGNATURE]
    for kind, content, whole in _chunks(data):
        if kind in _SHOWN:
            kept.append(whole)
            continue
        told.update(_told(kind, content))
        if kind == b"eXIf" and (upright := orientation_only(content)):
            kept.append(_chunk(kind, upright))
    return b"".join(kept), told


def _chunks(data: bytes) -> Iterator[tuple[bytes, bytes, bytes]]:
    """Kind, content and the whole of each chunk to the last; what follows that is no picture."""
    at, seen = len(_SIGNATURE), False
    while at + 12 <= len(data):
        length, kind = struct.unpack_from(">I4s", data, at)
        end = at + 12 + length
        if end > len(data):
            break
        seen = seen or kind == b"IDAT"
        content = b"" if kind == b"IDAT" else data[at + 8 : end - 4]
        yield kind, content, data[at:end]
        if kind == b"IEND" and seen:
            return
        at = end
    raise UnfitError("is a PNG picture that is cut off or damaged", "save it again")


def _told(kind: bytes, content: bytes) -> Iterator[Personal]:
    if kind == b"eXIf":
        yield from personal_in_exif(content)
    if kind == b"iTXt" and content.startswith(_XMP):
        yield from personal_in_xmp(content)
    if kind in {b"tEXt", b"zTXt", b"iTXt"} and content.startswith(_NAMES):
        yield Personal.NAME


def _chunk(kind: bytes, content: bytes) -> bytes:
    return (
        struct.pack(">I", len(content))
        + kind
        + content
        + struct.pack(">I", zlib.crc32(kind + content))
    )
