"""WebM films: RFC 8794 (EBML) and RFC 9559 (Matroska), sections 5.1.2 to 5.1.8; only heads are read.

Sizes stay: an element that goes becomes a Void of the same size, so that no position in an index changes.
"""

from __future__ import annotations

import os
import struct
from collections.abc import Iterator
from dataclasses import dataclass
from typing import BinaryIO

from generator.media.content import Blank, Kept, Part, UnfitError
from generator.model.film import Film, Sound
from generator.model.personal import Personal

_EBML, _SEGMENT, _VOID = 0x1A45DFA3, 0x18538067, 0xEC
_INFO, _TRACKS, _CLUSTER, _CUES, _SEEK = 0x1549A966, 0x1654AE6B, 0x1F43B675, 0x1C53BB6B, 0x114D9B74
_TAGS, _ATTACHED, _CHAPTERS = 0x1254C367, 0x1941A469, 0x1043A770
_NAMES, _SCALE, _DURATION = {0x7BA9, 0x7384}, 0x2AD7B1, 0x4489
"""Of an information: its title and the name of its file, what a unit of time is, and how many it lasts."""
_TRACK, _TYPE, _CODEC = 0xAE, 0x83, 0x86
_SHOWN = {_INFO, _TRACKS, _CLUSTER, _CUES, _SEEK}
"""What a player needs of a segment; tags, attachments and chapters are somebody's notes."""
_PICTURES, _SOUNDS = {b"V_VP8", b"V_VP9", b"V_AV1"}, {b"A_OPUS", b"A_VORBIS"}
_MOST = 200_000
_LONGEST = 1 << 20
_PLACES = (b"GPS", b"LOCATION", b"RECORDING_LOCATION")
_MAKERS = (b"ARTIST", b"DIRECTOR", b"AUTHOR", b"COPYRIGHT", b"COMPOSER", b"PERFORMER")
_CUT_OFF = "is a film that is cut off or damaged", "copy or export it again"
_EXPORT = "export it again as MP4 with H.264 and AAC, or let `python3 generator video` make it"


@dataclass(frozen=True, slots=True)
class _Element:
    kind: int
    start: int
    content: int
    """Where its content begins, after its head."""
    end: int


def webm_parts(file: BinaryIO, size: int) -> tuple[tuple[Part, ...], frozenset[Personal]]:
    """The parts of a film that go out, and what the others told of people.

    Raises:
        UnfitError: it is no WebM, or is cut off or damaged.
    """
    parts: list[Part] = []
    told: set[Personal] = set()
    at = 0
    for one in _notes(file, size):
        told.update(_told(_held(file, one)))
        parts += [Kept(at, one.start), *_void(one.end - one.start)]
        at = one.end
    return (*parts, Kept(at, size)), frozenset(told)


def read_webm(file: BinaryIO) -> Film:
    """What a film is.

    Raises:
        UnfitError: it is no film that browsers play.
        OSError: it cannot be read.
    """
    size = os.fstat(file.fileno()).st_size
    there = list(_inside(file, _segment(file, size)))
    info = next((one for one in there if one.kind == _INFO), None)
    tracks = next((one for one in there if one.kind == _TRACKS), None)
    if info is None or tracks is None:
        raise UnfitError(*_CUT_OFF)
    codecs = dict(_codecs(file, tracks))
    if 1 not in codecs:
        raise UnfitError("has sound and no picture", f"choose the film, or {_EXPORT}")
    if codecs[1] not in _PICTURES:
        raise UnfitError("is in a format which not every browser plays", _EXPORT)
    sound = Sound.NONE if 2 not in codecs else Sound.PLAYED
    if sound is Sound.PLAYED and codecs[2] not in _SOUNDS:
        sound = Sound.UNKNOWN
    return Film(
        seconds=_seconds(file, info),
        size=size,
        sound=sound,
        old_phones=False,
        begins_at_once=True,
        rehearsal=False,
    )


def _segment(file: BinaryIO, size: int) -> _Element:
    """All of a film but its head."""
    top = _elements(file, 0, size)
    head = next(top, None)
    if head is None or head.kind != _EBML or b"webm" not in _held(file, head):
        raise UnfitError("is no WebM film, whatever its name says", _EXPORT)
    found = next((one for one in top if one.kind == _SEGMENT), None)
    if found is None:
        raise UnfitError(*_CUT_OFF)
    return found


def _notes(file: BinaryIO, size: int) -> Iterator[_Element]:
    """Every element that stays at home, in the order of the file."""
    for one in _inside(file, _segment(file, size)):
        if one.kind == _INFO:
            yield from (inner for inner in _inside(file, one) if inner.kind in _NAMES)
        elif one.kind not in _SHOWN:
            yield one


def _told(note: bytes) -> Iterator[Personal]:
    large = note.upper()
    if any(word in large for word in _PLACES):
        yield Personal.PLACE
    if any(word in large for word in _MAKERS):
        yield Personal.NAME


def _codecs(file: BinaryIO, tracks: _Element) -> Iterator[tuple[int, bytes]]:
    """By type of a track (1 is a picture, 2 a sound) its codec, the last of a kind first."""
    found = []
    for track in _inside(file, tracks):
        if track.kind == _TRACK:
            held = {one.kind: _held(file, one) for one in _inside(file, track)}
            found.append(
                (int.from_bytes(held.get(_TYPE, b"")), held.get(_CODEC, b"").rstrip(b"\0"))
            )
    return iter(reversed(found))


def _seconds(file: BinaryIO, info: _Element) -> float:
    """Duration × scale in nanoseconds; a recorder may have left it open."""
    held = {one.kind: _held(file, one) for one in _inside(file, info)}
    scale = int.from_bytes(held.get(_SCALE, (1_000_000).to_bytes(3)))
    duration = held.get(_DURATION, b"")
    form = {4: ">f", 8: ">d"}.get(len(duration))
    found = struct.unpack(form, duration)[0] * scale / 1e9 if form else 0.0
    if not 0 < found < 1e6:
        raise UnfitError("does not say how long it is", _EXPORT)
    return float(found)


def _inside(file: BinaryIO, above: _Element) -> Iterator[_Element]:
    return _elements(file, above.content, above.end)


def _elements(file: BinaryIO, start: int, end: int) -> Iterator[_Element]:
    """The elements between two offsets; one of unknown size goes to the end."""
    for _ in range(_MOST):
        if start >= end:
            return
        file.seek(start)
        head = file.read(12)
        kind, width = _number(head, keep_mark=True)
        length, more = _number(head[width:], keep_mark=False)
        content = start + width + more
        stop = end if length == (1 << 7 * more) - 1 else content + length
        if stop > end:
            raise UnfitError(*_CUT_OFF)
        yield _Element(kind, start, content, stop)
        start = stop
    raise UnfitError(*_CUT_OFF)


def _number(data: bytes, *, keep_mark: bool) -> tuple[int, int]:
    """A number of variable size (RFC 8794 section 4), and how many bytes it takes."""
    if not data or not data[0]:
        raise UnfitError(*_CUT_OFF)
    width = 9 - data[0].bit_length()
    if width > len(data) or (keep_mark and width > 4):
        raise UnfitError(*_CUT_OFF)
    found = int.from_bytes(data[:width])
    return (found if keep_mark else found & (1 << 7 * width) - 1), width


def _held(file: BinaryIO, one: _Element) -> bytes:
    file.seek(one.content)
    return file.read(min(_LONGEST, one.end - one.content))


def _void(room: int) -> Iterator[Part]:
    """A Void of so many bytes: two of head in a small one, nine in any other."""
    if room < 128:
        yield bytes([_VOID, 0x80 | room - 2])
        yield Blank(room - 2)
    else:
        yield bytes([_VOID]) + (1 << 56 | room - 9).to_bytes(8)
        yield Blank(room - 9)
