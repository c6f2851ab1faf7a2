"""AVIF pictures: AV1 Image File Format 1.1; the items of ISO/IEC 14496-12, section 8.11.6. From memory."""

from __future__ import annotations

from io import BytesIO

from generator.media.boxes import Box, boxes, held
from generator.media.content import UnfitError

_BRANDS = (b"avif", b"avis")


def refuse_avif(data: bytes) -> None:
    """Refuse what is no AVIF, or holds the notes of a camera, which nobody takes out without harm.

    Raises:
        UnfitError: it is either.
    """
    file = BytesIO(data)
    there = list(boxes(file, 0, len(data)))
    kind = _held(file, there, b"ftyp")
    if not any(brand in kind for brand in _BRANDS):
        raise UnfitError("is no AVIF picture, whatever its name says", "save it again as AVIF")
    items = _held(file, there, b"meta")
    if b"infe" not in items:
        raise UnfitError("is an AVIF picture that is cut off or damaged", "save it again")
    if b"Exif\0" in items or b"application/rdf+xml" in items:
        what = "holds the notes of a camera, which may say where it was taken"
        raise UnfitError(what, "save it as JPEG or PNG, from which they are taken out")


def _held(file: BytesIO, there: list[Box], kind: bytes) -> bytes:
    return b"".join(held(file, box, 1 << 20) for box in there if box.kind == kind)
