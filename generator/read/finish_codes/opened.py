"""A file as text, line by line, however a spreadsheet wrote it: UTF-8, UTF-16 or Windows' own letters."""

from __future__ import annotations

import codecs
from collections.abc import Iterator
from pathlib import Path

LONGEST_LINE = 20_000
"""Letters of a line; the longest that the page writes has a tenth of it."""
_MARKS = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)
_PIECE = 1 << 20


def lines(file: Path) -> Iterator[str | None]:
    """Every line with its end; nothing in the place of one that is too long.

    A byte that is no letter becomes a question mark in a diamond: what a report reads is plain ASCII,
    and what is not is a label, which is dropped.

    Raises:
        OSError: the file cannot be read.
    """
    with file.open("r", encoding=_encoding(file), errors="replace", newline="") as text:
        while line := text.readline(LONGEST_LINE):
            if len(line) < LONGEST_LINE or line.endswith("\n"):
                yield line
                continue
            while (rest := text.readline(LONGEST_LINE)) and not rest.endswith(("\n", "\r")):
                pass
            yield None


def _encoding(file: Path) -> str:
    """How a file is written: as it says itself, as UTF-8 if all of it is, else as Windows writes."""
    decoder = codecs.getincrementaldecoder("utf-8")()
    with file.open("rb") as data:
        piece = data.read(_PIECE)
        for mark, name in _MARKS:
            if piece.startswith(mark):
                return name
        if b"\0" in piece[:200]:  # two bytes a letter, and no mark
            return "utf-16-le" if piece[1:2] == b"\0" else "utf-16-be"
        try:
            while piece:
                decoder.decode(piece)
                piece = data.read(_PIECE)
            decoder.decode(b"", final=True)
        except UnicodeDecodeError:
            return "cp1252"
    return "utf-8"
