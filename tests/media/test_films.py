"""Films are looked into, and lose what was noted about them; pictures and sound stay where they were.

Boxes: ISO/IEC 14496-12 sections 4.2, 8 and 11.1; codecs: ISO/IEC 14496-15 section 5.3.3 and the names
of the MP4 Registration Authority; profiles: ITU-T H.264 annex A. From memory; ffmpeg is the second opinion.
"""

from __future__ import annotations

import struct
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.media.content import UnfitError
from generator.media.film import is_marked, read_film
from generator.media.films import look
from generator.media.published import published
from generator.model.film import REHEARSAL_MARK, Film, Sound
from generator.model.personal import Personal
from tests.media_files import (
    PICTURE,
    START,
    VOICE,
    box,
    ffmpeg,
    film,
    h264,
    head,
    pixels,
    track,
)

PLACE = box(b"\xa9xyz", b"\0\x12\x15\xc7+48.2082+016.3738/")
NAME = box(b"\xa9ART", b"Ana Ruiz")


def looked_at(file: Path, data: bytes) -> Film:
    file.write_bytes(data)
    with file.open("rb") as held:
        return read_film(held)


def out(file: Path, data: bytes) -> tuple[bytes, frozenset[Personal]]:
    file.write_bytes(data)
    found = published(file)
    sent = b"".join(found.pieces())
    assert len(sent) == found.size == len(data), "what follows must stay where the index says"
    assert file.read_bytes() == data, "the file itself was changed"
    return sent, found.told


def test_a_film_for_the_web(tmp_path: Path) -> None:
    data = film(90)
    assert looked_at(tmp_path / "a.mp4", data) == Film(
        90, len(data), Sound.PLAYED, old_phones=True, begins_at_once=True, rehearsal=False
    )


def test_an_index_at_the_end(tmp_path: Path) -> None:
    data = START + box(b"mdat", b"pictures") + box(b"moov", head(9) + PICTURE)
    found = looked_at(tmp_path / "a.mp4", data)
    assert (found.begins_at_once, found.sound) == (False, Sound.NONE)


@pytest.mark.parametrize("codec", [b"av01", b"vp09"])
def test_newer_codecs(tmp_path: Path, codec: bytes) -> None:
    tracks = track(b"vide", box(codec, bytes(78))) + track(b"soun", box(b"Opus", bytes(28)))
    found = looked_at(tmp_path / "a.mp4", film(tracks=tracks))
    assert (found.old_phones, found.sound) == (False, Sound.PLAYED)


def test_a_sound_for_the_cinema(tmp_path: Path) -> None:
    tracks = PICTURE + track(b"soun", box(b"ac-3", bytes(28)))
    assert looked_at(tmp_path / "a.mp4", film(tracks=tracks)).sound is Sound.UNKNOWN


@pytest.mark.parametrize(
    ("data", "what"),
    [
        (film(tracks=track(b"vide", box(b"hvc1", bytes(78))) + VOICE), "is HEVC"),
        (film(tracks=track(b"vide", box(b"mp4v", bytes(78)))), "is MPEG-4 Part 2 or older"),
        (film(tracks=track(b"vide", box(b"XXXX", bytes(78)))), "is in a format"),
        (film(tracks=track(b"vide", h264(110))), "finer colors"),
        (film(tracks=track(b"vide", h264(122))), "finer colors"),
        (film(tracks=track(b"vide", h264(244))), "finer colors"),
        (film(tracks=track(b"vide", box(b"avc1"))), "finer colors"),
        (film(tracks=VOICE), "sound and no picture"),
        (film(tracks=PICTURE + track(b"meta", box(b"gpmd"))), "track of measurements"),
        (film().replace(b"isom", b"qt  ", 1), "under another name"),
        (film(tracks=b""), "sound and no picture"),
        (START + box(b"mdat", bytes(99)), "is not an MP4"),
        (b"RIFF....AVI ", "is not an MP4"),
        (b"", "is not an MP4"),
        (film()[:-3], "cut off or damaged"),
    ],
)  # fmt: skip
def test_a_film_that_browsers_do_not_play_is_refused(
    tmp_path: Path, data: bytes, what: str
) -> None:
    with pytest.raises(UnfitError, match=what) as refused:
        looked_at(tmp_path / "a.mp4", data)
    assert refused.value.hint


@pytest.mark.parametrize(
    ("options", "what"),
    [
        ("-c:v libx264 -pix_fmt yuv444p", "finer colors"),
        ("-c:v libx264 -pix_fmt yuv420p10le", "finer colors"),
        ("-c:v mpeg4", "is MPEG-4 Part 2"),
        ("-c:v libx264 -pix_fmt yuv420p -f mov", "under another name"),
        ("-vn -c:a aac", "sound and no picture"),
    ],
)
def test_what_an_encoder_makes_of_it_is_refused_too(
    tmp_path: Path, options: str, what: str
) -> None:
    file = tmp_path / "a.mp4"
    source = "-v error -f lavfi -i testsrc=s=64x48:d=1:r=5 -f lavfi -i sine=d=1 -shortest"
    ffmpeg(*source.split(), *options.split(), file)
    with pytest.raises(UnfitError, match=what):
        looked_at(file, file.read_bytes())


def test_a_rehearsal_is_known(tmp_path: Path) -> None:
    file = tmp_path / "a.mp4"
    for notes, known in ((box(b"udta", b"..Plumline rehearsal"), True), (b"", False)):
        file.write_bytes(film(notes=notes))
        assert is_marked(file, REHEARSAL_MARK) is known
    file.write_bytes(b"a film of someone")
    assert not is_marked(file, REHEARSAL_MARK)


@pytest.mark.parametrize(
    ("notes", "told"),
    [
        (box(b"udta", PLACE), {Personal.PLACE}),
        (box(b"udta", NAME), {Personal.NAME}),
        (box(b"meta", bytes(4) + b"com.apple.quicktime.location.ISO6709" + b"+48/"), {Personal.PLACE}),
        (box(b"udta", box(b"loci", bytes(30))), {Personal.PLACE}),
        (box(b"uuid", bytes(16) + b"<dc:creator>"), set()),
        (box(b"free", PLACE), set()),
    ],
)  # fmt: skip
def test_a_note_becomes_room_of_the_same_size(
    tmp_path: Path, notes: bytes, told: set[Personal]
) -> None:
    sent, found = out(tmp_path / "a.mp4", film(notes=notes))
    room = box(b"free", bytes(len(notes) - 8))
    assert sent == film(notes=room)
    assert found == told


def test_notes_are_found_wherever_they_stand(tmp_path: Path) -> None:
    inner = box(b"trak", box(b"udta", NAME) + box(b"mdia", box(b"udta", NAME)))
    part = box(b"moof", box(b"traf", box(b"meta", NAME)))
    data = START + box(b"moov", head(9) + inner) + part + box(b"mdat", b"x") + box(b"udta", PLACE)
    sent, told = out(tmp_path / "a.mp4", data)
    assert told == frozenset(Personal)
    assert not [word for word in (b"Ana", b"+48", b"udta", b"meta") if word in sent]


def test_pictures_and_sound_stay_as_they_are(tmp_path: Path) -> None:
    made, clean = tmp_path / "a.mp4", tmp_path / "b.mp4"
    source = "-v error -f lavfi -i testsrc=s=64x48:d=1:r=5 -f lavfi -i sine=d=1 -shortest"
    notes = ("-metadata", "artist=Ana Ruiz", "-metadata", "location=+48.2082+016.3738/")
    ffmpeg(*source.split(), "-pix_fmt", "yuv420p", *notes, "-movflags", "+faststart", made)
    sent, told = out(made, made.read_bytes())
    clean.write_bytes(sent)
    assert told == frozenset(Personal)
    assert not [word for word in (b"Ana Ruiz", b"+48.2082") if word in sent]
    said = ffmpeg("-i", clean, "-f", "null", "-")
    assert "Ana" not in said
    assert "location" not in said
    assert pixels(clean) == pixels(made)


def test_of_a_film_of_gigabytes_only_its_heads_are_read(tmp_path: Path) -> None:
    """A hole of five gigabytes, which no memory of a test would hold."""
    file, size = tmp_path / "a.mp4", 5_000_000_000
    with file.open("wb") as held:
        held.write(START + box(b"moov", head(9) + PICTURE + box(b"udta", PLACE)))
        held.write(struct.pack(">I4sQ", 1, b"mdat", size))
        held.truncate(held.tell() - 16 + size)
    with file.open("rb") as held:
        assert read_film(held).size > size
    with pytest.raises(UnfitError, match="larger than 4 GB"):
        look(file)
    found = published(file)
    assert found.size == file.stat().st_size
    first = next(iter(found.pieces()))
    assert first.startswith(START)


@given(data=st.data())
def test_whatever_was_done_to_a_film_it_goes_out_or_is_refused(
    tmp_path_factory: pytest.TempPathFactory, data: st.DataObject
) -> None:
    whole = bytearray(film(notes=box(b"udta", PLACE + NAME)))
    for _ in range(data.draw(st.integers(1, 4))):
        whole[data.draw(st.integers(0, len(whole) - 1))] = data.draw(st.integers(0, 255))
    file = tmp_path_factory.getbasetemp() / "a.mp4"
    file.write_bytes(whole[: data.draw(st.integers(0, len(whole)))])
    try:
        with file.open("rb") as held:
            read_film(held)
        found = published(file)
    except UnfitError:
        return  # a sentence and a way out are what it is made of
    assert sum(map(len, found.pieces())) == found.size == file.stat().st_size


@pytest.fixture(scope="module")
def webm(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A second in VP9 and Opus with a name and a place, RFC 9559."""
    file = tmp_path_factory.mktemp("webm") / "a.webm"
    source = "-v error -f lavfi -i testsrc=s=64x48:d=1:r=5 -f lavfi -i sine=d=1 -shortest"
    made = "-pix_fmt yuv420p -c:v libvpx-vp9 -c:a libopus -metadata location=+48.2082+016.3738/"
    ffmpeg(
        *source.split(),
        *made.split(),
        *("-metadata", "artist=Ana Ruiz", "-metadata", "title=Ana"),
        file,
    )
    return file


def test_a_webm_is_known_and_loses_its_notes(webm: Path, tmp_path: Path) -> None:
    found = look(webm)
    assert (found.seconds, found.sound, found.old_phones) == (
        pytest.approx(1, abs=0.1),
        Sound.PLAYED,
        False,
    )
    sent, told = out(tmp_path / "b.webm", webm.read_bytes())
    assert told == frozenset(Personal)
    assert not [word for word in (b"Ana", b"+48.2082") if word in sent]
    clean = tmp_path / "c.webm"
    clean.write_bytes(sent)
    assert pixels(clean) == pixels(webm)


@pytest.mark.parametrize(
    ("old", "new", "what"),
    [
        (b"V_VP9", b"V_XX9", "not every browser plays"),
        (b"\x83\x81\x01", b"\x83\x81\x03", "sound and no picture"),
        (b"webm", b"matr", "is no WebM"),
        (b"\x44\x89\x88", b"\x44\x8a\x88", "how long it is"),
    ],
)
def test_a_webm_that_is_none(webm: Path, tmp_path: Path, old: bytes, new: bytes, what: str) -> None:
    held = webm.read_bytes()
    assert old in held
    file = tmp_path / "a.webm"
    file.write_bytes(held.replace(old, new, 1))
    with pytest.raises(UnfitError, match=what):
        look(file)


@given(data=st.data())
def test_whatever_was_done_to_a_webm_it_goes_out_or_is_refused(
    webm: Path, tmp_path_factory: pytest.TempPathFactory, data: st.DataObject
) -> None:
    whole = bytearray(webm.read_bytes()[:1_500])
    for _ in range(data.draw(st.integers(1, 4))):
        whole[data.draw(st.integers(0, len(whole) - 1))] = data.draw(st.integers(0, 255))
    file = tmp_path_factory.getbasetemp() / "x.webm"
    file.write_bytes(whole[: data.draw(st.integers(0, len(whole)))])
    try:
        look(file)
        found = published(file)
    except UnfitError:
        return  # a sentence and a way out are what it is made of
    assert sum(map(len, found.pieces())) == found.size == file.stat().st_size
