"""Pictures are looked into and lose their notes; no pixel of them changes.

Layouts: W3C PNG third edition section 5, ITU-T T.81 annex B, RFC 9649 section 2, GIF89a sections 17
to 27, CIPA DC-008 section 4 (from memory). Pixels are held against ffmpeg's decoders.
"""

from __future__ import annotations

import struct
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.media.content import UnfitError
from generator.media.published import published
from generator.model.personal import Personal
from tests.media_files import chunk, exif_of_a_phone, ffmpeg, jpeg, pixels, png, segment

BOTH = frozenset(Personal)
IPTC = b"Photoshop 3.0\0" + b"\x1c\x02\x5a\0\4Wien" + b"\x1c\x02\x50\0\3Ana"
XMP = b"http://ns.adobe.com/xap/1.0/\0<dc:creator>Ana</dc:creator><exif:GPSLatitude>48</exif:GPSLatitude>"
EXIF = exif_of_a_phone()
JPEG_NOTES = segment(0xE1, b"Exif\0\0" + EXIF), segment(0xE1, XMP), segment(0xED, IPTC)
PNG_NOTES = (
    chunk(b"tEXt", b"Author\0Ana"), chunk(b"eXIf", EXIF), chunk(b"tIME", bytes(7)),
    chunk(b"iTXt", b"XML:com.adobe.xmp\0\0\0\0\0" + XMP), chunk(b"prVt", b"anything"),
)  # fmt: skip


def out(file: Path, data: bytes) -> tuple[bytes, frozenset[Personal]]:
    """What goes out of a file with this content, and what is told."""
    file.write_bytes(data)
    found = published(file)
    sent = b"".join(found.pieces())
    assert len(sent) == found.size
    assert file.read_bytes() == data, "the file itself was changed"
    return sent, found.told


def riff(*chunks: tuple[bytes, bytes]) -> bytes:
    """Chunks as a WebP."""
    body = b"WEBP" + b"".join(
        kind + struct.pack("<I", len(held)) + held + bytes(len(held) % 2) for kind, held in chunks
    )
    return b"RIFF" + struct.pack("<I", len(body)) + body


def test_a_png_keeps_what_it_is_drawn_by(tmp_path: Path) -> None:
    sent, told = out(tmp_path / "a.png", png(chunk(b"gAMA", bytes(4)), *PNG_NOTES) + b"GPS behind")
    upright = chunk(b"eXIf", struct.pack(">2sHIHHHIHHI", b"MM", 42, 8, 1, 0x0112, 3, 1, 6, 0, 0))
    assert sent == png(chunk(b"gAMA", bytes(4)), upright)
    assert told == BOTH


def test_a_jpeg_keeps_its_colours_and_which_way_is_up(tmp_path: Path) -> None:
    shown = segment(0xE0, b"JFIF\0" + bytes(9)), segment(0xE2, b"ICC_PROFILE\0\1\1colours")
    noted = (*shown, *JPEG_NOTES, segment(0xFE, b"Ana"), segment(0xE2, b"MPF\0and more pictures"))
    sent, told = out(tmp_path / "a.jpg", jpeg(*noted) + b"a film behind the picture")
    upright = struct.pack(">2sHIHHHIHHI", b"MM", 42, 8, 1, 0x0112, 3, 1, 6, 0, 0)
    assert sent == jpeg(*shown, segment(0xE1, b"Exif\0\0" + upright))
    assert told == BOTH


def test_a_picture_the_right_way_up_keeps_no_note_at_all(tmp_path: Path) -> None:
    noted = jpeg(segment(0xE1, b"Exif\0\0" + exif_of_a_phone(1)))
    assert out(tmp_path / "a.jpg", noted)[0] == jpeg()


@pytest.mark.parametrize(
    ("note", "told"),
    [
        (segment(0xED, b"\x1c\x02\x5a\0\4Wien"), {Personal.PLACE}),
        (segment(0xED, b"\x1c\x02\x50\0\3Ana"), {Personal.NAME}),
        (segment(0xFE, b"made with a program"), set()),
    ],
)
def test_what_is_told_is_what_was_found(tmp_path: Path, note: bytes, told: set[Personal]) -> None:
    """IPTC-IIM record 2: data set 80 is who made it, 90 the city."""
    assert out(tmp_path / "a.jpg", jpeg(note)) == (jpeg(), told)


def test_a_webp_says_no_more_that_it_has_notes(tmp_path: Path) -> None:
    picture = (b"VP8L", b"odd"), (b"ICCP", b"colours!")
    noted = riff((b"VP8X", b"\x2c" + bytes(9)), *picture, (b"EXIF", EXIF), (b"XMP ", XMP))
    sent, told = out(tmp_path / "a.webp", noted)
    upright = struct.pack(">2sHIHHHIHHI", b"MM", 42, 8, 1, 0x0112, 3, 1, 6, 0, 0)
    assert sent == riff((b"VP8X", b"\x28" + bytes(9)), *picture, (b"EXIF", upright))
    assert told == BOTH


@pytest.mark.parametrize("ending", ["png", "jpg", "gif"])
def test_no_pixel_changes(tmp_path: Path, ending: str) -> None:
    made, clean = tmp_path / f"a.{ending}", tmp_path / f"b.{ending}"
    ffmpeg("-v", "error", "-f", "lavfi", "-i", "testsrc=s=64x48:d=1:r=1", "-frames:v", "1", made)
    held = made.read_bytes()
    note = {
        "png": lambda: held[:33] + b"".join(PNG_NOTES) + held[33:],
        "jpg": lambda: held[:2] + b"".join(JPEG_NOTES) + held[2:],
        "gif": lambda: held[:-1] + b"\x21\xfe\x03Ana\0" + held[-1:],
    }[ending]
    made.write_bytes(note())
    clean.write_bytes(b"".join(published(made).pieces()))
    assert clean.stat().st_size < made.stat().st_size
    assert b"Ana" not in clean.read_bytes()
    assert pixels(clean) == pixels(made)


def test_an_avif_with_notes_is_refused(tmp_path: Path) -> None:
    """AV1 Image File Format: notes are items, whose places in the file nobody moves without harm."""
    kind = struct.pack(">I8s", 16, b"ftypavif") + bytes(4)
    plain = kind + struct.pack(">I4s", 20, b"meta") + b"infe....av01"
    file = tmp_path / "a.avif"
    assert out(file, plain)[0] == plain
    file.write_bytes(kind + struct.pack(">I4s", 24, b"meta") + b"infe.......Exif\0")
    with pytest.raises(UnfitError, match="notes of a camera"):
        published(file)


WRONG: list[tuple[str, bytes, str]] = [
    ("a.png", b"<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>", "is no PNG"),
    ("a.jpg", png(), "is no JPEG"),
    ("a.jpeg", b"", "is no JPEG"),
    ("a.gif", jpeg(), "is no GIF"),
    ("a.webp", b"RIFF\0\0\0\0AVI ", "is no WebP"),
    ("a.avif", b"\0\0\0\x10ftypheic\0\0\0\0", "is no AVIF"),
    ("a.png", png()[:-9], "cut off or damaged"),
    ("a.jpg", jpeg()[:-2], "cut off or damaged"),
    ("a.jpg", b"\xff\xd8\xff\xd9", "cut off or damaged"),
    ("a.gif", b"GIF89a" + bytes(7), "cut off or damaged"),
    ("a.webp", riff((b"EXIF", EXIF)), "cut off or damaged"),
]


@pytest.mark.parametrize(("name", "data", "what"), WRONG)
def test_a_picture_that_is_none_is_refused(
    tmp_path: Path, name: str, data: bytes, what: str
) -> None:
    (tmp_path / name).write_bytes(data)
    with pytest.raises(UnfitError, match=what):
        published(tmp_path / name)


def test_a_picture_has_a_largest_size(tmp_path: Path) -> None:
    file = tmp_path / "a.png"
    with file.open("wb") as held:
        held.truncate(30_000_001)  # a hole: no disk is filled
    with pytest.raises(UnfitError, match="can have 30 MB"):
        published(file)


GOOD: dict[str, Callable[[], bytes]] = {
    "a.png": lambda: png(*PNG_NOTES),
    "a.jpg": lambda: jpeg(*JPEG_NOTES),
    "a.webp": lambda: riff((b"VP8X", b"\x2c" + bytes(9)), (b"VP8 ", b"x"), (b"EXIF", EXIF)),
    "a.gif": lambda: b"GIF89a" + bytes(7) + b"\x21\xfe\x03Ana\0" + b"\x3b",
}


@pytest.mark.parametrize("name", GOOD)
@given(data=st.data())
def test_whatever_was_done_to_a_file_it_goes_out_or_is_refused(
    tmp_path_factory: pytest.TempPathFactory, name: str, data: st.DataObject
) -> None:
    whole = bytearray(GOOD[name]())
    for _ in range(data.draw(st.integers(1, 4))):
        whole[data.draw(st.integers(0, len(whole) - 1))] = data.draw(st.integers(0, 255))
    file = tmp_path_factory.getbasetemp() / name
    file.write_bytes(whole[: data.draw(st.integers(0, len(whole)))])
    try:
        found = published(file)
    except UnfitError:
        return  # a sentence and a way out are what it is made of
    assert sum(map(len, found.pieces())) == found.size
