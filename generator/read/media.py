"""Whether the video and its captions are there, and how long the video is."""

from __future__ import annotations

import struct
from collections.abc import Iterator
from os import R_OK, access
from pathlib import Path
from typing import BinaryIO
from unicodedata import normalize

from generator.model.places import Path as DataPath
from generator.model.places import Places
from generator.problems import Problem
from generator.read.explain import did_you_mean
from generator.read.source import Data

ENDINGS = {
    "file": (".mp4",),
    "captions": (".vtt",),
    "poster": (".jpg", ".jpeg", ".png", ".webp", ".avif"),
}
"""What a lesson may name, and how such files end: what is named is published, so nothing else can be."""


def video_problems(
    video: Data, places: Places, folder: Path, *, filmed: bool = True
) -> Iterator[Problem]:
    """Files the lesson names and that are not beside it, or that no browser can play.

    Args:
        video: what the lesson says of its video.
        places: where it says so.
        folder: the lesson's own.
        filmed: whether the files must be there; their names are looked at in any case.
    """
    if not isinstance(video, dict):
        return
    captions = video.get("captions")
    named: list[tuple[DataPath, Data]] = [
        (("video", "file"), video.get("file")),
        (("video", "poster"), video.get("poster")),
    ]
    named += (
        [(("video", "captions", key), name) for key, name in captions.items()]
        if isinstance(captions, dict)
        else []
    )
    for path, name in named:
        if not isinstance(name, str):
            continue
        if told := _name_fault(name, str(path[1])) or _link_fault(folder, name):
            yield Problem(places.at(*path), *told)
        elif filmed:
            yield from _file(name, path, places, folder)


def video_seconds(video: Data, folder: Path) -> float | None:
    """Length of the MP4 in seconds; nothing where it is missing or holds no length."""
    name = video.get("file") if isinstance(video, dict) else None
    if not isinstance(name, str) or not lies_beside(folder, name):
        return None
    try:
        with (folder / name).open("rb") as file:
            return _movie_seconds(file)
    except OSError:  # told beside its name
        return None


def lies_beside(folder: Path, name: str) -> bool:
    """Whether a file of this name lies in the folder itself; no file has a name that no disk can hold."""
    try:
        file = folder / name
        return _is_plain(name) and file.is_file() and not file.is_symlink()
    except (OSError, ValueError):
        return False


def _is_plain(name: str) -> bool:
    """Whether a name leads neither out of a folder nor into another one, on any machine."""
    return Path(name).name == name and not any(sign in name for sign in "\\:") and name != ".."


_OF_ADDRESSES = "#?%&"
"""What follows one of these is no part of a file's name any more once a page asks for it."""
_OF_DISKS = '<>"|*'
"""No file on Windows has one of these in its name, and a copy is carried home to any machine."""


def _name_fault(name: str, key: str) -> tuple[str, str] | None:
    """What is wrong with a name, wherever its file is, and the way out."""
    if not _is_plain(name):
        what = f"`{name}` lies outside the lesson's folder, or deeper inside it"
        return what, "put the file beside lesson.yaml and give its name alone"
    hint = "name the file with letters, digits and hyphens"
    if signs := "".join(sign for sign in _OF_ADDRESSES if sign in name):
        return (
            f"the name `{name}` holds `{signs}`, which has a meaning of its own in an address",
            hint,
        )
    if any(sign in _OF_DISKS or sign < " " for sign in name):
        return f"the name `{name}` holds a sign that not every machine takes in a name", hint
    if name.startswith("."):
        return f"`{name}` begins with a point, which hides it", hint
    if not name.lower().endswith(ENDINGS[key]):
        kinds = " or ".join(f"`{ending}`" for ending in ENDINGS[key])
        return f"`{name}` is no file for `{key}`", f"its name ends in {kinds}"
    return None


def _link_fault(folder: Path, name: str) -> tuple[str, str] | None:
    """A name that is there and leads to another place."""
    if is_link(folder / name):
        return (
            f"`{name}` is a link to another place, and no link is followed",
            "put the file itself here",
        )
    return None


def is_link(file: Path) -> bool:
    """Whether a file is a link; a name that no disk can hold is none."""
    try:
        return file.is_symlink()
    except (OSError, ValueError):
        return False


def _file(name: str, path: DataPath, places: Places, folder: Path) -> Iterator[Problem]:
    place = places.at(*path)
    if not lies_beside(folder, name):
        beside = [file.name for file in folder.iterdir() if file.suffix == Path(name).suffix]
        if name in {normalize("NFC", one) for one in beside}:
            hint = "its accents are spelled in another way on the disk; name it without any"
            yield Problem(place, f"there is no file `{name}` beside the lesson", hint)
            return
        hint = did_you_mean(name, beside) if beside else f"put it into the folder `{folder.name}`"
        if name.endswith(".mp4") and not beside:
            hint += f", or make one to practise with: python3 generator rehearse {folder.name}"
        yield Problem(place, f"there is no file `{name}` beside the lesson", hint)
    elif not access(folder / name, R_OK):
        yield Problem(place, f"`{name}` cannot be opened", "ask whose it is")
    elif path == ("video", "file") and video_seconds({"file": name}, folder) is None:
        yield Problem(
            place,
            f"`{name}` is not an MP4 video that can be played",
            "export it again as MP4 (H.264)",
        )


def _movie_seconds(file: BinaryIO) -> float | None:
    """Duration ÷ timescale of the movie header box, ISO/IEC 14496-12 section 8.2.2."""
    size = file.seek(0, 2)
    movie = _find(file, b"moov", 0, size)
    header = _find(file, b"mvhd", *movie) if movie else None
    if not header:
        return None
    file.seek(header[0])
    data = file.read(32)
    version = data[0] if len(data) == 32 else None
    if version == 1:
        timescale, duration = struct.unpack(">IQ", data[20:32])
    elif version == 0:
        timescale, duration = struct.unpack(">II", data[12:20])
    else:
        return None
    return duration / timescale if timescale else None


def _find(file: BinaryIO, kind: bytes, start: int, end: int) -> tuple[int, int] | None:
    """Where the content of the first box of a kind begins and ends, between two offsets in bytes."""
    while start + 8 <= end:
        file.seek(start)
        length, name = struct.unpack(">I4s", file.read(8))
        head = 8
        if length == 1:
            if start + 16 > end:
                return None
            length, head = struct.unpack(">Q", file.read(8))[0], 16
        length = length or end - start
        if length < head or start + length > end:
            return None
        if name == kind:
            return start + head, start + length
        start += length
    return None
