"""Text of a file on disk, or a problem that says why it cannot be had."""

from __future__ import annotations

from pathlib import Path, PurePosixPath

from generator.problems import Place, Problem

LARGEST_TEXT = 5_000_000
"""Bytes; a longer text file is some other file by mistake."""

LINKED = "this is a link to another place, and no link is followed"
_OWN = "lessons"
"""The folder whose files go out; what it leads to elsewhere is nobody's to publish."""


def is_linked(root: Path, path: str) -> bool:
    """Whether a path below ``lessons/`` is a link or leads through one."""
    first, *parts = PurePosixPath(path).parts
    place = root / first
    return first == _OWN and any((place := place / part).is_symlink() for part in parts)


def read_text(root: Path, path: str) -> str | Problem:
    """The text of a file below the root, in UTF-8."""
    file = root / path
    place = Place(path)
    if is_linked(root, path):
        return Problem(place, LINKED, "put the file itself here")
    if not file.is_file():
        return Problem(
            place, "this file is missing", "put it back, or take it from the last commit"
        )
    if file.stat().st_size > LARGEST_TEXT:
        return Problem(
            place,
            "this file is far too large for a text file",
            "check which file was saved under this name",
        )
    try:
        data = file.read_bytes().removeprefix(b"\xef\xbb\xbf")  # a byte order mark is no text
    except OSError as error:
        return Problem(place, f"this file cannot be opened ({error.strerror})", "ask whose it is")
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        before = data[: error.start].split(b"\n")
        column = len(before[-1].decode("utf-8")) + 1
        return Problem(
            Place(path, len(before), column),
            "this file is not saved as UTF-8",
            "save it again with the encoding UTF-8",
        )
