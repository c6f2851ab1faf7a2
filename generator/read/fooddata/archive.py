"""The zip itself: whether it is a whole, safe FoodData Central download, before a row is read.

Nothing is ever unpacked to the disk. Paths that climb out are refused all the same, for no
official download has them.
"""

from __future__ import annotations

import re
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path, PurePosixPath

from generator.problems import LessonError
from generator.read.fooddata.found import Found
from generator.read.fooddata.layout import COLUMNS, READ

LARGEST = 12_000_000_000
"""Bytes the files may hold together; the full download with its packages holds about 4 thousand million."""
STEEPEST = 200
"""How many times larger than its packed size a file may be; figures in CSV reach about 20."""
SMALL = 10_000_000
"""Bytes below which the steepness says nothing."""
MOST_MEMBERS = 1_000
AGAIN = "download it again from https://fdc.nal.usda.gov/download-datasets and leave it as it comes"

Members = dict[str, zipfile.ZipInfo]
"""The files of the download by their plain name."""


@contextmanager
def opened(file: Path, found: Found) -> Iterator[tuple[zipfile.ZipFile, Members]]:
    """Open a download whose files can be read one after another.

    Raises:
        LessonError: it is missing, no zip, broken off, locked, too large, or not such a download.
    """
    if not file.is_file():
        raise found.stop("there is no such file", "check its name and folder")
    try:
        archive = zipfile.ZipFile(file)
    except (zipfile.BadZipFile, OSError, EOFError, NotImplementedError, ValueError):
        raise found.stop("this is not a whole zip file", AGAIN) from None
    with archive:
        members = archive.infolist()
        _refuse_unsafe(members, found)
        yield archive, _wanted(members, found)


def broken(found: Found, member: str) -> LessonError:
    """The error for a file whose packed bytes do not come out as they went in."""
    return found.stop("this file is damaged inside the zip", AGAIN, member)


def _refuse_unsafe(members: list[zipfile.ZipInfo], found: Found) -> None:
    if len(members) > MOST_MEMBERS:
        raise found.stop(f"the zip holds {len(members)} files, far more than a download has", AGAIN)
    for member in members:
        if _climbs(member.filename):
            found.add(f"the zip names a file outside itself: `{member.filename}`", AGAIN)
        elif member.flag_bits & 1:
            found.add(f"`{member.filename}` is locked with a password", AGAIN)
        elif member.file_size > max(SMALL, STEEPEST * member.compress_size):
            found.add(f"`{member.filename}` would unfold to {_size(member.file_size)}", AGAIN)
    total = sum(member.file_size for member in members)
    if total > LARGEST:
        hint = "take the download of one kind of food, such as SR Legacy or Foundation"
        found.add(f"the files in this zip hold {_size(total)}, more than {_size(LARGEST)}", hint)
    found.settle()


def _climbs(name: str) -> bool:
    path = PurePosixPath(name.replace("\\", "/"))
    return path.is_absolute() or ".." in path.parts or bool(re.match(r"[A-Za-z]:", name))


def _wanted(members: list[zipfile.ZipInfo], found: Found) -> Members:
    """The files that are read, from the top or from one folder."""
    wanted: Members = {}
    for member in members:
        path = PurePosixPath(member.filename)
        if len(path.parts) > 2 or path.parts[:1] == ("__MACOSX",):
            continue
        if path.name in READ:
            if path.name in wanted:
                found.add(f"the zip holds two files called `{path.name}`", AGAIN)
            wanted[path.name] = member
    missing = [name for name in COLUMNS if name not in wanted]
    if len(missing) == len(COLUMNS):
        raise found.stop(
            "this zip is no FoodData Central CSV download: it holds none of its files",
            "choose a download marked CSV at https://fdc.nal.usda.gov/download-datasets",
        )
    for name in missing:
        found.add(f"`{name}` is missing from the zip", AGAIN)
    found.settle()
    return wanted


def _size(size: int) -> str:
    return f"{size / 1_000_000_000:.1f} GB" if size >= 100_000_000 else f"{size // 1_000_000} MB"
