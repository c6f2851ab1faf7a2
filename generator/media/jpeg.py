"""JPEG pictures: ITU-T T.81 annex B (markers), JFIF 1.02, Exif 2.3 section 4.7 (application segments)."""

from __future__ import annotations

import struct
from collections.abc import Iterator

from generator.media.content import UnfitError
from generator.media.exif import (
    orientation_only,
    personal_in_exif,
    personal_in_iptc,
    personal_in_xmp,
)
from generator.model.personal import Personal

_APP0, _APP1, _APP2, _APP13, _APP14, _APP15, _COMMENT = 0xE0, 0xE1, 0xE2, 0xED, 0xEE, 0xEF, 0xFE
_SCAN, _END = 0xDA, 0xD9
_FRAMES = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}
_EXIF, _XMP, _ICC, _JFIF = b"Exif\0\0", b"http://ns.adobe.com/", b"ICC_PROFILE\0", b"JFIF\0"
_CUT_OFF = "is a JPEG picture that is cut off or damaged", "save it again"


def clean_jpeg(data: bytes) -> tuple[bytes, set[Personal]]:
    """The picture without its notes, and what they told of people; no pixel is touched.

    What stands behind the picture's end, such as a second picture or a film, goes too.

    Raises:
        UnfitError: it is no whole JPEG.
    """
    if not data.startswith(b"\xff\xd8\xff"):
        raise UnfitError("is no JPEG picture, whatever its name says", "save it again as JPEG")
    told: set[Personal] = set()
    kept, drawn = [data[:2]], False
    for marker, content, whole in _segments(data):
        if marker == _APP1 and content.startswith(_EXIF):
            tiff = content[len(_EXIF) :]
            told.update(personal_in_exif(tiff))
            if upright := orientation_only(tiff):
                kept.append(_segment(_APP1, _EXIF + upright))
            continue
        told.update(_told(marker, content))
        if _is_shown(marker, content):
            kept.append(whole)
        drawn = drawn or marker in _FRAMES
    if not drawn:
        raise UnfitError(*_CUT_OFF)
    return b"".join(kept), told


def _is_shown(marker: int, content: bytes) -> bool:
    """Whether a picture is drawn by a segment."""
    if marker == _APP0:
        return content.startswith(_JFIF)
    if marker == _APP2:
        return content.startswith(_ICC)
    return marker == _APP14 or not (_APP0 <= marker <= _APP15 or marker == _COMMENT)


def _told(marker: int, content: bytes) -> Iterator[Personal]:
    if marker == _APP1 and content.startswith(_XMP):
        yield from personal_in_xmp(content)
    if marker == _APP13:
        yield from personal_in_iptc(content)


def _segments(data: bytes) -> Iterator[tuple[int, bytes, bytes]]:
    """Marker, content and the whole of each segment; the lines of a scan belong to it."""
    at = 2
    while at + 2 <= len(data) and data[at] == 0xFF:
        marker = data[at + 1]
        if marker == 0xFF:  # any number of these may stand before a marker
            at += 1
            continue
        if marker == _END:
            yield marker, b"", data[at : at + 2]
            return
        if at + 4 > len(data):
            break
        content = at + 4
        end = at + 2 + struct.unpack_from(">H", data, at + 2)[0]
        if end < content or end > len(data):
            break
        stop = _scan_end(data, end) if marker == _SCAN else end
        yield marker, data[content:end], data[at:stop]
        at = stop
    raise UnfitError(*_CUT_OFF)


def _scan_end(data: bytes, at: int) -> int:
    """Where the next marker stands; a stuffed zero and the restart markers belong to the scan."""
    while (at := data.find(b"\xff", at)) >= 0 and at + 1 < len(data):
        following = data[at + 1]
        if following == 0 or 0xD0 <= following <= 0xD7:
            at += 2
        elif following == 0xFF:
            at += 1
        else:
            return at
    raise UnfitError(*_CUT_OFF)


def _segment(marker: int, content: bytes) -> bytes:
    return struct.pack(">BBH", 0xFF, marker, len(content) + 2) + content
