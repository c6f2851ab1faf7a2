"""Pictures and films made box by box and chunk by chunk, for tests that look into them."""

from __future__ import annotations

import struct
import subprocess
import zlib
from collections.abc import Iterable
from pathlib import Path

import imageio_ffmpeg


def box(kind: bytes, content: bytes = b"", size: int | None = None) -> bytes:
    """One box; a size of its own makes it a broken one."""
    return struct.pack(">I4s", 8 + len(content) if size is None else size, kind) + content


def head(seconds: float, version: int = 0, scale: int = 1000) -> bytes:
    """A movie header, ISO/IEC 14496-12 section 8.2.2."""
    form = ">B3xIIII" if version == 0 else ">B3xQQIQ"
    fixed = struct.pack(form, version, 0, 0, scale, round(seconds * scale))
    return box(b"mvhd", fixed + bytes(80))


def track(handler: bytes, codec: bytes) -> bytes:
    """A track of one codec, sections 8.4.3 and 8.5.2."""
    described = box(b"stsd", struct.pack(">II", 0, 1) + codec)
    kind = box(b"hdlr", bytes(8) + handler + bytes(13))
    return box(b"trak", box(b"mdia", kind + box(b"minf", box(b"stbl", described))))


def h264(profile: int = 100) -> bytes:
    """A codec as ISO/IEC 14496-15 section 5.3.3 describes it."""
    return box(b"avc1", bytes(78) + box(b"avcC", bytes([1, profile, 0, 31, 255])))


PICTURE = track(b"vide", h264())
VOICE = track(b"soun", box(b"mp4a", bytes(28)))
START = box(b"ftyp", b"isom\0\0\2\0isom")


def film(seconds: float = 90, *, tracks: bytes = PICTURE + VOICE, notes: bytes = b"") -> bytes:
    """A film with its index first and a little of a picture after it."""
    return START + box(b"moov", head(seconds) + tracks + notes) + box(b"mdat", b"pictures")


def chunk(kind: bytes, content: bytes = b"") -> bytes:
    """A chunk of a PNG, W3C PNG third edition section 5.3."""
    checked = struct.pack(">I", zlib.crc32(kind + content))
    return struct.pack(">I", len(content)) + kind + content + checked


def png(*notes: bytes) -> bytes:
    """A picture of one grey dot, its notes before the dot."""
    shape = chunk(b"IHDR", struct.pack(">IIBBBBB", 1, 1, 8, 0, 0, 0, 0))
    dot = chunk(b"IDAT", zlib.compress(b"\0\x80"))
    return b"\x89PNG\r\n\x1a\n" + shape + b"".join(notes) + dot + chunk(b"IEND")


def jpeg(*segments: bytes) -> bytes:
    """Segments and one scan of a picture, ITU-T T.81 annex B; nobody decodes it."""
    shape = b"\xff\xc0\0\x0b\x08\0\1\0\1\1\1\x11\0"
    scan = b"\xff\xda\0\x08\1\1\0\0\x3f\0\x12\xff\0\x34"
    return b"\xff\xd8" + b"".join(segments) + shape + scan + b"\xff\xd9"


def segment(marker: int, content: bytes) -> bytes:
    """One segment with its length."""
    return struct.pack(">BBH", 0xFF, marker, len(content) + 2) + content


def tiff(entries: Iterable[tuple[int, int, int, int]], rest: bytes = b"") -> bytes:
    """One directory of tag, kind, count and value, TIFF 6.0 section 2, and what it points to."""
    listed = list(entries)
    held = b"".join(struct.pack("<HHII", *entry) for entry in listed)
    return b"II*\0" + struct.pack("<IH", 8, len(listed)) + held + bytes(4) + rest


def exif_of_a_phone(orientation: int = 6) -> bytes:
    """Which way is up, somebody's name, and a position of one entry: CIPA DC-008, section 4.6."""
    start = 8 + 2 + 3 * 12 + 4
    position = struct.pack("<HHHII", 1, 1, 2, 2, int.from_bytes(b"N\0", "little")) + bytes(4)
    entries = [
        (0x0112, 3, 1, orientation),
        (0x013B, 2, 8, start + len(position)),
        (0x8825, 4, 1, start),
    ]
    return tiff(entries, position + b"Ana Ruiz")


def ffmpeg(*options: str | Path) -> str:
    """Run ffmpeg; what it says. Fails where it fails."""
    command = [imageio_ffmpeg.get_ffmpeg_exe(), "-hide_banner", "-y", *map(str, options)]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout + done.stderr


def pixels(file: Path) -> str:
    """A sum of every picture and all sound in a file, decoded."""
    return ffmpeg("-v", "error", "-i", file, "-f", "md5", "-")
