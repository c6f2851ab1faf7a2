"""GIF pictures: Graphics Interchange Format version 89a (1990), sections 17 to 27."""

from __future__ import annotations

from collections.abc import Iterator

from generator.media.content import UnfitError
from generator.media.exif import personal_in_xmp
from generator.model.personal import Personal

_IMAGE, _EXTENSION, _END = 0x2C, 0x21, 0x3B
_CONTROL, _APPLICATION = 0xF9, 0xFF
_REPEATS = (b"\x0bNETSCAPE2.0", b"\x0bANIMEXTS1.0")
"""How often a moving picture runs; other applications write notes."""
_CUT_OFF = "is a GIF picture that is cut off or damaged", "save it again"


def clean_gif(data: bytes) -> tuple[bytes, set[Personal]]:
    """The picture without its notes, and what they told of people.

    Raises:
        UnfitError: it is no whole GIF.
    """
    if data[:6] not in {b"GIF87a", b"GIF89a"}:
        raise UnfitError("is no GIF picture, whatever its name says", "save it again as GIF")
    try:
        kept, told = list[bytes](), set[Personal]()
        for label, block in _blocks(data):
            if label in {_CONTROL, None} or (label == _APPLICATION and block[2:14] in _REPEATS):
                kept.append(block)
            else:
                told.update(personal_in_xmp(block))
    except IndexError:
        raise UnfitError(*_CUT_OFF) from None
    return b"".join(kept), told


def _blocks(data: bytes) -> Iterator[tuple[int | None, bytes]]:
    """The head, images and the end, which have no label, and extensions with theirs."""
    at = 13 + _colours(data[10])
    yield None, data[:at]
    while data[at] != _END:
        start = at
        if data[at] == _IMAGE:
            at = _after(data, at + 11 + _colours(data[at + 9]))
            yield None, data[start:at]
        elif data[at] == _EXTENSION:
            at = _after(data, at + 2)
            yield data[start + 1], data[start:at]
        else:
            raise UnfitError(*_CUT_OFF)
    yield None, data[at : at + 1]


def _colours(packed: int) -> int:
    """Bytes of a table of colours, if there is one."""
    return 3 << (packed & 7) + 1 if packed & 0x80 else 0


def _after(data: bytes, at: int) -> int:
    """Where sub-blocks end: each says its length, the last has none."""
    while data[at]:
        at += data[at] + 1
    return at + 1
