"""Lines put together into rows of cells: quotes, line ends inside of them, and quotes that never close."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

from generator.read.finish_codes.opened import LONGEST_LINE

MOST_LINES = 50
"""Lines of one row, whose label may run over several."""


class Broken(StrEnum):
    """Why a line is no row."""

    TOO_LONG = "this line is far too long"
    OPEN_QUOTE = "a quote is opened in this line and not closed"


@dataclass(frozen=True, slots=True)
class Record:
    """A row of a file."""

    line: int
    """Where it begins, counted from 1."""
    cells: tuple[str, ...]
    """What stands in each."""


@dataclass(frozen=True, slots=True)
class Unread:
    """A line that is no row; what stands in it is kept nowhere."""

    line: int
    """Counted from 1."""
    why: str
    """A sentence without a full stop."""


class Records:
    """The rows of a file, one after another."""

    def __init__(self, lines: Iterator[str | None]) -> None:
        self._lines = lines
        self._waiting: list[str | None] = []
        """Lines that were looked at already, the next one last."""
        self._at = 0

    @property
    def line(self) -> int:
        """Where the last line that was taken stands, counted from 1."""
        return max(self._at, 1)

    def first(self) -> str:
        """The next line without its end; empty where there is none, or none that can be read."""
        return (self._next() or "").rstrip("\r\n")

    def read(self, separator: str, width: int) -> Iterator[Record | Unread]:
        """Every row that is not empty, and every line that is none.

        Args:
            separator: what stands between two cells.
            width: how many cells a row should have; one that runs over lines and has not so many is
                taken for a quote that stands wrong, and no line after it is lost.
        """
        while self._more():
            line, number = self._next(), self._at
            if line is None:
                yield Unread(number, Broken.TOO_LONG)
            elif '"' not in line:
                if line.strip():
                    yield Record(number, tuple(line.rstrip("\r\n").split(separator)))
            else:
                cells = self._quoted(line, separator, width)
                yield Record(number, cells) if cells else Unread(number, Broken.OPEN_QUOTE)

    def _quoted(self, first: str, separator: str, width: int) -> tuple[str, ...]:
        """The cells of a row with quotes; none, and no further line taken, where they do not close."""
        taken: list[str] = []
        text = first
        while text.count('"') % 2 and self._may_go_on(text, len(taken)):
            line = self._next()
            if line is None:
                self._give_back([*taken, line])
                return ()
            taken.append(line)
            text += line
        cells = cells_of(text, separator)
        if not cells or (taken and len(cells) != width):
            self._give_back([*taken])
            return ()
        return cells

    def _may_go_on(self, text: str, lines: int) -> bool:
        return len(text) < LONGEST_LINE and lines < MOST_LINES and self._more()

    def _more(self) -> bool:
        if not self._waiting:
            for line in self._lines:
                self._waiting.append(line)
                break
        return bool(self._waiting)

    def _next(self) -> str | None:
        """The next line; nothing where it is too long, or there is none."""
        if not self._more():
            return None
        self._at += 1
        return self._waiting.pop()

    def _give_back(self, lines: list[str | None]) -> None:
        self._waiting.extend(reversed(lines))
        self._at -= len(lines)


def cells_of(text: str, separator: str) -> tuple[str, ...]:
    """The cells of a row; none where its quotes do not pair up."""
    if text.count('"') % 2:
        return ()
    try:
        rows = list(csv.reader([text], delimiter=separator))
    except csv.Error:
        return ()
    return tuple(rows[0]) if len(rows) == 1 else ()
