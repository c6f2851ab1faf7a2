"""What of a film goes out: its pictures and its sound, and nothing that was noted about them.

A box that stays at home becomes one of the same size that is free, so that pictures and sound stay
where the index says they are: ISO/IEC 14496-12, sections 8.1.2 (free), 8.10.1 (udta), 8.11.1 (meta),
11.1 (uuid). Apple's and 3GPP's names of notes (TS 26.244, section 8) from memory.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator
from typing import BinaryIO

from generator.media.boxes import Box, boxes, held, inside
from generator.media.content import Blank, Kept, Part
from generator.model.personal import Personal

_WHOLE = {
    b"": {*b"ftyp styp moov moof mdat mfra sidx ssix prft pdin".split()},
    b"moov": {*b"mvhd trak mvex iods".split()},
    b"trak": {*b"tkhd tref trgr edts mdia".split()},
    b"mdia": {*b"mdhd hdlr elng minf".split()},
    b"moof": {*b"mfhd traf".split()},
    b"traf": {*b"tfhd tfdt trun sbgp sgpd subs saiz saio".split()},
}
"""What a player needs, by the box it stands in; every other box is somebody's notes."""
_FREE = {b"free", b"skip", b"wide"}
"""Room that was left; programs that take notes out leave them there."""
_PLACES = (b"\xa9xyz", b"loci", b"location.ISO6709", b"GPS")
_NAMES = (
    b"\xa9ART",
    b"\xa9aut",
    b"\xa9cpy",
    b"cprt",
    b"auth",
    b"perf",
    b"aART",
    b"artist",
    b"author",
)
_LOOKED_AT = 1 << 20
"""Bytes of a note that are looked through."""


def film_parts(file: BinaryIO, size: int) -> tuple[tuple[Part, ...], frozenset[Personal]]:
    """The parts of a film that go out, and what the others told of people.

    Args:
        file: the film.
        size: of it, in bytes; what goes out has as many.

    Raises:
        UnfitError: it is cut off or damaged.
    """
    told: set[Personal] = set()
    parts: list[Part] = []
    at = 0
    for box in _notes(file, boxes(file, 0, size), b""):
        told.update(_told(file, box))
        room = box.end - box.start
        parts += [Kept(at, box.start), *_free(room)]
        at = box.end
    return (*parts, Kept(at, size)), frozenset(told)


def _notes(file: BinaryIO, there: Iterator[Box], above: bytes) -> Iterator[Box]:
    """Every box that stays at home, in the order of the file."""
    for box in there:
        if box.kind not in _WHOLE[above]:
            yield box
        elif box.kind in _WHOLE:
            yield from _notes(file, inside(file, box), box.kind)


def _told(file: BinaryIO, box: Box) -> Iterator[Personal]:
    if box.kind in _FREE:
        return
    note = held(file, box, _LOOKED_AT)
    if any(word in note for word in _PLACES):
        yield Personal.PLACE
    if any(word in note for word in _NAMES):
        yield Personal.NAME


def _free(room: int) -> Iterator[Part]:
    """A free box of so many bytes; its size in 64 bits where 32 do not say it."""
    if room < 1 << 32:
        yield struct.pack(">I4s", room, b"free")
        yield Blank(room - 8)
    else:
        yield struct.pack(">I4sQ", 1, b"free", room)
        yield Blank(room - 16)
