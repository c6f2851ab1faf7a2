"""A film's file read as far as it says what is in it, and refused where browsers would not play it.

ISO/IEC 14496-12, sections 4.3 (ftyp), 8.2.2 (mvhd), 8.4.3 (hdlr), 8.5.2 (stsd); ISO/IEC 14496-15,
section 5.3.3 (avcC); ITU-T H.264 annex A (profiles); RFC 6381 and the registry of the MP4
Registration Authority for the four signs of a codec. From memory.
"""

from __future__ import annotations

import os
import struct
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO

from generator.media.boxes import Box, boxes, find, held, inside
from generator.media.content import UnfitError
from generator.model.film import REHEARSAL_MARK, Film, Sound

_PROFILES = {66, 77, 100}
"""Baseline, main and high: 8 bits, 4:2:0."""
_H264, _NEWER = {b"avc1", b"avc3"}, {b"av01", b"vp08", b"vp09"}
_CODECS = {
    **dict.fromkeys((b"hvc1", b"hev1", b"dvh1", b"dvhe"), "HEVC (H.265)"),
    **dict.fromkeys((b"mp4v", b"s263"), "MPEG-4 Part 2 or older"),
    **dict.fromkeys((b"apcn", b"apch", b"apcs", b"apco", b"ap4h"), "for cutting"),
    b"jpeg": "single JPEG pictures",
    b"encv": "locked",
}
_EXPORT = "export it again as MP4 with H.264 (8 bit, 4:2:0) and AAC, or let `python3 generator video` make it"
_NO_FILM = "is not an MP4 video that can be played"
_BEGINNINGS = {b"ftyp", b"styp", b"moov", b"mdat", b"free", b"skip", b"wide"}
"""Kinds of box that a film may begin with."""
_LONGEST = 100_000
"""Bytes of a box of codecs that are read."""


def read_film(file: BinaryIO) -> Film:
    """What a film is.

    Raises:
        UnfitError: it is no film that browsers play.
        OSError: it cannot be read.
    """
    size = os.fstat(file.fileno()).st_size
    if file.read(8)[4:] not in _BEGINNINGS:
        raise UnfitError(_NO_FILM, _EXPORT)
    there = [
        box for box in boxes(file, 0, size) if box.kind in {b"ftyp", b"moov", b"mdat", b"moof"}
    ]
    movie = next((box for box in there if box.kind == b"moov"), None)
    seconds = _seconds(file, movie) if movie else None
    if movie is None or seconds is None:
        raise UnfitError(_NO_FILM, _EXPORT)
    _refuse_brand(file, there)
    tracks = dict(_tracks(file, movie))
    if b"meta" in tracks:
        what = "holds a track of measurements, which may say where it was filmed"
        raise UnfitError(what, "let `python3 generator video` make one without it")
    if b"vide" not in tracks:
        raise UnfitError("has sound and no picture", f"choose the film, or {_EXPORT}")
    _refuse_picture(tracks[b"vide"])
    pictures = next((box.start for box in there if box.kind in {b"mdat", b"moof"}), size)
    return Film(
        seconds=seconds,
        size=size,
        sound=_sound(tracks.get(b"soun")),
        old_phones=tracks[b"vide"][4:8] in _H264,
        begins_at_once=movie.start < pictures,
        rehearsal=_is_marked(file, movie, REHEARSAL_MARK),
    )


def film_seconds(file: BinaryIO) -> float | None:
    """Length of a film in seconds; nothing where it holds none or is damaged.

    Raises:
        OSError: it cannot be read.
    """
    try:
        there = boxes(file, 0, os.fstat(file.fileno()).st_size)
        movie = next((box for box in there if box.kind == b"moov"), None)
        return _seconds(file, movie) if movie else None
    except UnfitError:
        return None


def is_marked(film: Path, mark: str) -> bool:
    """Whether a film's own description holds a mark of this program; no other file has one.

    Raises:
        OSError: it cannot be read.
    """
    try:
        with film.open("rb") as file:
            there = boxes(file, 0, film.stat().st_size)
            movie = next((box for box in there if box.kind == b"moov"), None)
            return movie is not None and _is_marked(file, movie, mark)
    except UnfitError:
        return False


def has_sound(film: Path) -> bool:
    """Whether a film is heard.

    Raises:
        OSError: it cannot be read.
    """
    try:
        with film.open("rb") as file:
            return read_film(file).sound is not Sound.NONE
    except UnfitError:
        return False


def _seconds(file: BinaryIO, movie: Box) -> float | None:
    """Duration ÷ timescale of the movie header."""
    header = find(file, movie, b"mvhd")
    data = held(file, header, 32) if header else b""
    if len(data) < 32 or data[0] > 1:
        return None
    form, at = (">IQ", 20) if data[0] else (">II", 12)
    timescale, duration = struct.unpack_from(form, data, at)
    return duration / timescale if timescale else None


def _refuse_brand(file: BinaryIO, there: list[Box]) -> None:
    """A film of a program for cutting may have another ending and be the same still."""
    kind = next((held(file, box, 4) for box in there if box.kind == b"ftyp"), b"")
    if kind == b"qt  ":
        raise UnfitError("is a film as cameras write it (.mov) under another name", _EXPORT)


def _tracks(file: BinaryIO, movie: Box) -> Iterator[tuple[bytes, bytes]]:
    """What each track is for (``vide``, ``soun``), the last of a kind first, and its first codec as it stands."""
    found = []
    for track in inside(file, movie):
        media = find(file, track, b"mdia") if track.kind == b"trak" else None
        handler = find(file, media, b"hdlr") if media else None
        codecs = find(file, media, b"minf", b"stbl", b"stsd") if media else None
        if handler and codecs:
            found.append((held(file, handler, 12)[8:12], held(file, codecs, _LONGEST)[8:]))
    return iter(reversed(found))


def _refuse_picture(codec: bytes) -> None:
    name = codec[4:8]
    if name in _H264:
        at = codec.find(b"avcC")
        profile = codec[at + 5] if 0 <= at < len(codec) - 5 else 0
        if profile not in _PROFILES:
            raise UnfitError(
                "has finer colors than browsers play (10 bit, 4:2:2 or 4:4:4)", _EXPORT
            )
    elif name not in _NEWER:
        what = f"is {_CODECS.get(name, 'in a format')}, which not every browser plays"
        raise UnfitError(what, _EXPORT)


def _sound(codec: bytes | None) -> Sound:
    if codec is None:
        return Sound.NONE
    return Sound.PLAYED if codec[4:8] in {b"mp4a", b"Opus"} else Sound.UNKNOWN


def _is_marked(file: BinaryIO, movie: Box, mark: str) -> bool:
    notes = find(file, movie, b"udta")
    return notes is not None and mark.encode() in held(file, notes, _LONGEST)
