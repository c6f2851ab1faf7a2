"""Notes of a camera in a picture: which of them tell of people, and the one that a browser needs.

CIPA DC-008 (Exif 2.3): section 4.5 (TIFF header and directories), 4.6.4 (tags of a picture),
4.6.6 (position), 4.6.5 (owner); XMP and IPTC-IIM record 2 by their published names. From memory.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator

from generator.model.personal import Personal

_ORIENTATION, _EXIF, _GPS = 0x0112, 0x8769, 0x8825
_NAMES = {0x013B, 0x8298, 0x9C9D, 0xA430}
"""Artist, Copyright, the author as file managers write it, and the camera's owner."""
_MOST = 500
"""Entries of a directory that are looked at."""
_PLACE_WORDS = (b"GPSLatitude", b"photoshop:City", b"photoshop:Country", b"Iptc4xmpCore:Location")
_NAME_WORDS = (b"dc:creator", b"dc:rights", b"tiff:Artist", b"photoshop:Credit", b"OwnerName")
_IPTC_PLACES = {26, 27, 90, 92, 95, 100, 101}
_IPTC_NAMES = {80, 110, 116, 118, 122}


def personal_in_exif(tiff: bytes) -> Iterator[Personal]:
    """What Exif tells of people; nothing of what is broken, which goes all the same."""
    for tag, _ in _entries(tiff, _first(tiff)):
        if tag in _NAMES:
            yield Personal.NAME
    for tag, value in _entries(tiff, _first(tiff)):
        if tag == _GPS and any(True for _ in _entries(tiff, value)):
            yield Personal.PLACE
        if tag == _EXIF and any(inner in _NAMES for inner, _ in _entries(tiff, value)):
            yield Personal.NAME


def orientation_only(tiff: bytes) -> bytes:
    """The same with nothing but which way is up; empty where that is as usual."""
    found = next((value for tag, value in _entries(tiff, _first(tiff)) if tag == _ORIENTATION), 1)
    if not 1 < found <= 8:
        return b""
    head = struct.pack(">2sHI", b"MM", 42, 8)
    return head + struct.pack(">HHHIHHI", 1, _ORIENTATION, 3, 1, found, 0, 0)


def personal_in_xmp(packet: bytes) -> Iterator[Personal]:
    """What an XMP packet tells of people."""
    if any(word in packet for word in _PLACE_WORDS):
        yield Personal.PLACE
    if any(word in packet for word in _NAME_WORDS):
        yield Personal.NAME


def personal_in_iptc(data: bytes) -> Iterator[Personal]:
    """What IPTC-IIM records tell of people: a mark, record 2, and the number of what follows."""
    at = data.find(b"\x1c\x02")
    while 0 <= at < len(data) - 2:
        if data[at + 2] in _IPTC_PLACES:
            yield Personal.PLACE
        if data[at + 2] in _IPTC_NAMES:
            yield Personal.NAME
        at = data.find(b"\x1c\x02", at + 2)


def _order(tiff: bytes) -> str:
    return {b"II*\0": "<", b"MM\0*": ">"}.get(tiff[:4], "")


def _first(tiff: bytes) -> int:
    """Where the first directory begins; 0 where there is none."""
    order = _order(tiff)
    return int(struct.unpack(f"{order}I", tiff[4:8])[0]) if order and len(tiff) >= 8 else 0


def _entries(tiff: bytes, at: int) -> Iterator[tuple[int, int]]:
    """Tags of a directory and their values, of a short one the number itself."""
    order = _order(tiff)
    if not order or at < 8 or at + 2 > len(tiff):
        return
    number = struct.unpack(f"{order}H", tiff[at : at + 2])[0]
    for start in range(at + 2, at + 2 + 12 * min(number, _MOST), 12):
        if start + 12 > len(tiff):
            return
        tag, kind = struct.unpack(f"{order}HH", tiff[start : start + 4])
        form = "H" if kind == 3 else "I"
        value = struct.unpack_from(f"{order}{form}", tiff, start + 8)[0]
        yield tag, value
