"""Whether the video and its captions are there, and how long the video is."""

from __future__ import annotations

import struct
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO

from generator.model.places import Path as DataPath
from generator.model.places import Places
from generator.problems import Problem
from generator.read.explain import did_you_mean
from generator.read.source import Data


def video_problems(video: Data, places: Places, folder: Path) -> Iterator[Problem]:
    """Files the lesson names and that are not beside it, or that no browser can play."""
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
        if isinstance(name, str):
            yield from _file(name, path, places, folder)


def video_seconds(video: Data, folder: Path) -> float | None:
    """Length of the MP4 in seconds; nothing where it is missing or holds no length."""
    name = video.get("file") if isinstance(video, dict) else None
    if not isinstance(name, str) or not lies_beside(folder, name):
        return None
    with (folder / name).open("rb") as file:
        return _movie_seconds(file)


def lies_beside(folder: Path, name: str) -> bool:
    """Whether a file of this name lies in the folder itself; no file has a name that no disk can hold."""
    try:
        return _is_plain(name) and (folder / name).is_file()
    except (OSError, ValueError):
        return False


def _is_plain(name: str) -> bool:
    """Whether a name leads neither out of a folder nor into another one."""
    return Path(name).name == name and "\\" not in name


_OF_ADDRESSES = "#?%&"
"""What follows one of these is no part of a file's name any more once a page asks for it."""


def _file(name: str, path: DataPath, places: Places, folder: Path) -> Iterator[Problem]:
    place = places.at(*path)
    if not _is_plain(name):
        yield Problem(
            place,
            f"`{name}` lies outside the lesson's folder, or deeper inside it",
            "put the file beside lesson.yaml and give its name alone",
        )
    elif signs := "".join(sign for sign in _OF_ADDRESSES if sign in name):
        yield Problem(
            place,
            f"the name `{name}` holds `{signs}`, which has a meaning of its own in an address",
            "name the file with letters, digits and hyphens",
        )
    elif not lies_beside(folder, name):
        beside = [file.name for file in folder.iterdir() if file.suffix == Path(name).suffix]
        hint = did_you_mean(name, beside) if beside else f"put it into the folder `{folder.name}`"
        if name.endswith(".mp4") and not beside:
            hint += f", or make one to practise with: python3 generator rehearse {folder.name}"
        yield Problem(place, f"there is no file `{name}` beside the lesson", hint)
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
