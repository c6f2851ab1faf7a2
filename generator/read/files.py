"""Text of a file on disk, or a problem that says why it cannot be had."""

from __future__ import annotations

import re
from pathlib import Path, PurePosixPath
from unicodedata import normalize

from generator.problems import Place, Problem

LARGEST_TEXT = 5_000_000
"""Bytes; a longer text file is some other file by mistake."""
LARGEST_LESSON = 100_000
"""Bytes of a lesson file; the longest of the demo has a tenth of it."""

LINKED = "this is a link to another place, and no link is followed"
_LINE_END = re.compile(rb"\r\n|[\r\n]")
"""As YAML, Markdown and captions end a line; an old Mac wrote the first sign alone."""
_OWN = "lessons"
"""The folder whose files go out; what it leads to elsewhere is nobody's to publish."""


def is_linked(root: Path, path: str) -> bool:
    """Whether a path below ``lessons/`` is a link or leads through one."""
    first, *parts = PurePosixPath(path).parts
    place = root / first
    return first == _OWN and any((place := place / part).is_symlink() for part in parts)


def read_text(root: Path, path: str, largest: int = LARGEST_TEXT) -> str | Problem:
    """The text of a file below the root, in UTF-8, every accent one sign with its letter (NFC).

    Some programs write ``é`` as an ``e`` and an accent of its own; a line has then more signs than letters.

    Args:
        root: folder of the site.
        path: of the file below it.
        largest: bytes it may have.
    """
    place = Place(path)
    if is_linked(root, path):
        return Problem(place, LINKED, "put the file itself here")
    try:
        data = _data(root / path, place, largest)
    except OSError as error:
        return Problem(place, f"this file cannot be opened ({error.strerror})", "ask whose it is")
    if isinstance(data, Problem):
        return data
    try:
        return normalize("NFC", data.decode("utf-8"))
    except UnicodeDecodeError as error:
        before = _LINE_END.split(data[: error.start])
        column = len(normalize("NFC", before[-1].decode("utf-8"))) + 1
        return Problem(
            Place(path, len(before), column),
            "this file is not saved as UTF-8",
            "save it again with the encoding UTF-8",
        )


def _data(file: Path, place: Place, largest: int) -> bytes | Problem:
    """What the file holds, without a byte order mark, which is no text."""
    if not file.is_file():
        return Problem(
            place, "this file is missing", "put it back, or take it from the last commit"
        )
    if file.stat().st_size > largest:
        allowed = f"it can have {largest // 1000:,} kB"
        what = f"this file is far too large for a text file: {allowed}"
        return Problem(place, what, "check which file was saved under this name")
    return file.read_bytes().removeprefix(b"\xef\xbb\xbf")
