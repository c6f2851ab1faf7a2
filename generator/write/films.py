"""A lesson's films made from the file of a camera: one for the web, a smaller one, slides with the voice, and a still.

All are made in a hidden folder beside the lesson and take their places only when all are whole.
"""

from __future__ import annotations

import shutil
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from fractions import Fraction
from pathlib import Path

from generator.media.film import film_seconds, has_sound, is_marked
from generator.present.recording.rehearsal import Picture
from generator.write.encoder import EncoderError, described, run
from generator.write.rehearsal import encode

MARK = "Plumline video"
"""Stands in every file that is made here: one without it is somebody's, and never replaced."""
ENDINGS = {
    "file": "web.mp4",
    "smaller": "small.mp4",
    "slides": "slides.mp4",
    "poster": "poster.jpg",
}
"""By the key under ``video:`` that names it: how the name of a file ends, after the lesson's own."""
_MAKING = ".films-being-made"
_FILE = [
    "-map_metadata",
    "-1",
    "-map_chapters",
    "-1",
    "-fflags",
    "+bitexact",
    "-flags:v",
    "+bitexact",
    "-flags:a",
    "+bitexact",
]
_NOTED = ["-metadata", f"comment={MARK}", "-movflags", "+faststart"]
_WEB = "1280:720", "-crf 23 -maxrate 2500k -bufsize 5000k -fpsmax 30", "-b:a 96k -ac 2"
_SMALL = "640:360", "-crf 28 -maxrate 350k -bufsize 700k -fpsmax 25", "-b:a 48k -ac 1"
"""Room for the picture, what it may cost, and what its sound may. 360 lines still show a number on
a slide; a minute of it takes at most 3 MB. Ours, no source."""
_STILL_AT = Fraction(2)
"""Seconds: by then a film shows what it is about, and the hand has left the camera."""
_WIDE = ("arib-std-b67", "smpte2084")
"""How films with a wide range of light say so: HLG and PQ of ITU-R BT.2100, which telephones write at first."""
_TONED = (
    "zscale=t=linear:npl=100,format=gbrpf32le,zscale=p=bt709,tonemap=hable:desat=0,"
    "zscale=t=bt709:m=bt709:r=tv,"
)
"""Such light brought into the range of every screen (ITU-R BT.709); untouched it looks pale and grey."""
_VOICE = ["-c:a", "aac", "-b:a", "48k", "-ac", "1"]


@dataclass(frozen=True, slots=True)
class Making:
    """What is to be made of which film."""

    source: Path
    """The film of a camera; it is only read."""
    folder: Path
    """The lesson's own."""
    pictures: tuple[Picture, ...] = field(repr=False)
    """The slides with their times; none where no film is made of them."""
    still_at: Fraction | None
    """Seconds from the start to the moment of the still picture; without it, one near the start."""

    def named(self, key: str) -> Path:
        """The file that a key of ``video:`` names."""
        return self.folder / f"{self.folder.name}-{ENDINGS[key]}"


def in_the_way(making: Making) -> Path | None:
    """The first file that would be replaced and was not made here."""
    there = (making.named(key) for key in ENDINGS)
    return next((file for file in there if file.exists() and not _is_ours(file)), None)


def make_films(making: Making, program: str) -> dict[str, Path]:
    """Make what can be made; gives the files by the keys of ``video:``, those of earlier days replaced.

    Args:
        making: what is to be made.
        program: path of the encoder.

    Raises:
        EncoderError: the film cannot be read or the disk is full; every older file is as it was.
        OSError: a file cannot be written.
    """
    with _folder(making.folder / _MAKING) as folder:
        _film(making.source, folder / ENDINGS["file"], _WEB, program)
        web = folder / ENDINGS["file"]
        _film(web, folder / ENDINGS["smaller"], _SMALL, program)
        if making.pictures and has_sound(web):
            _slides(making.pictures, web, folder, program)
        _still(web, folder / ENDINGS["poster"], making.still_at, program)
        made = {key: making.named(key) for key, end in ENDINGS.items() if (folder / end).exists()}
        for key, file in made.items():
            (folder / ENDINGS[key]).replace(file)
    return made


@contextmanager
def _folder(folder: Path) -> Iterator[Path]:
    """A folder that is gone afterwards, whatever happens; what a cut of the power left in it goes first."""
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir()
    try:
        yield folder
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _is_ours(file: Path) -> bool:
    if file.is_symlink():
        return False
    if file.suffix == ".mp4":
        return is_marked(file, MARK)
    with file.open("rb") as picture:
        return MARK.encode() in picture.read(200)


def _film(source: Path, file: Path, look: tuple[str, str, str], program: str) -> None:
    """H.264 high with 8 bits and 4:2:0, AAC, the index first and no note of the camera's."""
    room, picture, sound = look
    width, height = room.split(":")
    source = source.resolve()
    toned = _TONED if any(one in described(program, source) for one in _WIDE) else ""
    filters = (
        f"scale='min({width},iw)':'min({height},ih)':force_original_aspect_ratio=decrease"
        f":force_divisible_by=2:flags=lanczos,{toned}format=yuv420p,setsar=1"
    )
    options = [
        *("-protocol_whitelist", "file", "-i", f"file:{source}"),
        *("-map", "0:v:0", "-map", "0:a:0?", "-vf", filters),
        *["-c:v", "libx264", "-profile:v", "high", "-preset", "medium"],
        *picture.split(),
        *["-c:a", "aac"],
        *sound.split(),
        *(*_FILE, *_NOTED, file.name),
    ]
    run(program, options, file.parent)


def _slides(pictures: Sequence[Picture], web: Path, folder: Path, program: str) -> None:
    """The slides as long as the film, with its sound; the last one stands until the end."""
    length = _length(web)
    silent = folder / "silent.mp4"
    if said := encode(_as_long(pictures, length), silent, program):
        raise EncoderError(said)
    sources = ["-i", silent.name, "-i", web.name, "-map", "0:v", "-map", "1:a"]
    kept = ["-c:v", "copy", *_VOICE, *_FILE, *_NOTED, ENDINGS["slides"]]
    run(program, [*sources, *kept], folder)


def _length(film: Path) -> float:
    """Seconds of a film that was made here."""
    with film.open("rb") as file:
        return film_seconds(file) or 0


def _as_long(pictures: Sequence[Picture], length: float) -> list[Picture]:
    """Pictures that fill a length in seconds and no more of it."""
    shown: list[Picture] = []
    for number, picture in enumerate(pictures, 1):
        rest = length - sum(one.seconds for one in shown)
        if rest <= 0:
            break
        last = number == len(pictures)
        shown.append(replace(picture, seconds=rest if last else min(rest, picture.seconds)))
    return shown


def _still(web: Path, file: Path, at: Fraction | None, program: str) -> None:
    """One picture of the film, no larger than a phone shows it."""
    if at is None:
        at = min(_STILL_AT, Fraction(_length(web)) / 2)
    look = "scale='min(960,iw)':-2"
    options = [
        "-ss",
        f"{float(at):.3f}",
        "-i",
        web.name,
        "-frames:v",
        "1",
        "-vf",
        look,
        "-q:v",
        "5",
    ]
    run(program, [*options, *_FILE, file.name], file.parent)
    if not file.exists():
        raise EncoderError("the film has no picture at that moment")
    held = file.read_bytes()
    note = b"\xff\xfe" + (len(MARK) + 2).to_bytes(2) + MARK.encode()  # ITU-T T.81, section B.2.4.5
    file.write_bytes(held[:2] + note + held[2:])
