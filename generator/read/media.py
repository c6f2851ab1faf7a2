"""Whether the video and its captions are there, and how long the video is."""

from __future__ import annotations

from collections.abc import Iterator
from os import R_OK, access
from pathlib import Path
from unicodedata import normalize

from generator.media.content import UnfitError
from generator.media.films import FILM_ENDINGS, look, seconds_of
from generator.media.published import published
from generator.model.film import Film
from generator.model.personal import LeftOut
from generator.model.places import Path as DataPath
from generator.model.places import Places
from generator.problems import Problem
from generator.read.explain import did_you_mean
from generator.read.source import Data

ENDINGS = {
    "file": FILM_ENDINGS,
    "smaller": FILM_ENDINGS,
    "slides": FILM_ENDINGS,
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
    for path, name in _named(video):
        if not isinstance(name, str):
            continue
        if told := _name_fault(name, str(path[1])) or _link_fault(folder, name):
            yield Problem(places.at(*path), *told)
        elif filmed:
            yield from _file(name, path, places, folder)


def _named(video: Data) -> list[tuple[DataPath, Data]]:
    """Every file that a lesson names under `video:`, and where."""
    if not isinstance(video, dict):
        return []
    captions = video.get("captions")
    named: list[tuple[DataPath, Data]] = [
        (("video", key), video.get(key)) for key in ENDINGS if key != "captions"
    ]
    if isinstance(captions, dict):
        named += [(("video", "captions", key), name) for key, name in captions.items()]
    return named


def video_seconds(video: Data, folder: Path) -> float | None:
    """Length of the film in seconds; nothing where it is missing or holds no length."""
    name = video.get("file") if isinstance(video, dict) else None
    if not isinstance(name, str) or not lies_beside(folder, name):
        return None
    try:
        return seconds_of(folder / name)
    except OSError:  # told beside its name
        return None


def read_video(video: Data, folder: Path) -> tuple[dict[str, Film], tuple[LeftOut, ...]]:
    """The films a lesson names by their keys, and what is taken out of its files before they are published.

    Args:
        video: what the lesson says of its video; every file in it was looked at before.
        folder: the lesson's own.
    """
    films: dict[str, Film] = {}
    left_out: list[LeftOut] = []
    for path, name in _named(video):
        if not isinstance(name, str) or not lies_beside(folder, name):
            continue
        try:
            if told := published(folder / name).told:
                left_out.append(LeftOut(path, name, told))
            if name.lower().endswith(ENDINGS["file"]):
                films[str(path[-1])] = look(folder / name)
        except (UnfitError, OSError):  # told beside its name
            continue
    return films, tuple(left_out)


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
    if name.lower().startswith(("https://", "http://")):
        what = f"`{name}` is an address, and `{key}:` takes the name of a file beside the lesson"
        way = "write `elsewhere:` before it, in the place of `file:`; the lesson then leads there"
        return what, way if key == "file" else "put the file beside lesson.yaml and give its name"
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
        if other := _but_for_capitals(name, folder):
            hint = f"`{other}` is there, and capitals count; write the name as it is on the disk"
            yield Problem(place, f"there is no file `{name}` beside the lesson", hint)
            return
        hint = did_you_mean(name, beside) if beside else f"put it into the folder `{folder.name}`"
        if name.endswith(".mp4") and not beside:
            hint += f", or make one to practice with: python3 generator rehearse {folder.name}"
        yield Problem(place, f"there is no file `{name}` beside the lesson", hint)
    elif not access(folder / name, R_OK):
        yield Problem(place, f"`{name}` cannot be opened", "ask whose it is")
    elif fault := _fault(folder / name):
        yield Problem(place, f"`{name}` {fault[0]}", fault[1])


def _but_for_capitals(name: str, folder: Path) -> str:
    """A file beside the lesson whose name differs in capitals alone, or nothing."""
    names = sorted(file.name for file in folder.iterdir())
    return next((one for one in names if one.casefold() == name.casefold()), "")


def _fault(file: Path) -> tuple[str, str] | None:
    """Why a file is not what its name says, or no browser plays it; and the way out."""
    try:
        if file.suffix.lower() in ENDINGS["file"]:
            look(file)
        published(file)
    except UnfitError as error:
        return error.what, error.hint
    except OSError as error:
        return f"cannot be read ({error.strerror})", "see whether the disk is in order"
    return None
