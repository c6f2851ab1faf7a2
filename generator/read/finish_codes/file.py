"""A file of finish codes, row by row, with what is left out of it and why."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from generator.read.finish_codes.opened import lines
from generator.read.finish_codes.records import Record, Records, cells_of
from generator.read.finish_codes.row import WANTED, CodeRow, code_row

_SEPARATORS = ",;\t"
_PACKED = b"PK\x03\x04"
_CHANGED = "save it anew from the page that reads finish codes, and change nothing in it"
_ROW = "read the code on the page that reads finish codes, and save the file anew"


@dataclass(frozen=True, slots=True)
class LeftOut:
    """Lines that are not counted; nothing that stands in them is kept."""

    file: str
    """As it was named."""
    first: int
    """Counted from 1."""
    last: int
    """Counted from 1; the same as the first where it is one line."""
    why: str
    """A sentence without a full stop."""
    hint: str
    """What to do about it."""

    def __str__(self) -> str:
        lines = f"{self.first}" if self.first == self.last else f"{self.first}-{self.last}"
        return f"{self.file}:{lines}: {self.why}: {self.hint}"


@dataclass(frozen=True, slots=True)
class Head:
    """What the first line of a file says."""

    separator: str
    """What stands between two cells."""
    width: int
    """How many cells a row has."""
    at: Mapping[str, int]
    """Where each wanted column stands."""


def read_file(file: Path, name: str) -> Iterator[CodeRow | LeftOut]:
    """Every row of a file, and every line that is none.

    Args:
        file: where it is.
        name: what it is called in a message.
    """
    try:
        if why := _no_table(file):
            yield LeftOut(name, 1, 1, *why)
            return
        yield from _rows(Records(lines(file)), name)
    except OSError as error:
        why_not = f"this file cannot be read ({(error.strerror or 'no reason').lower()})"
        yield LeftOut(name, 1, 1, why_not, "see whether it is there and whose it is")


def _no_table(file: Path) -> tuple[str, str] | None:
    """Why a file holds no table of text at all."""
    with file.open("rb") as data:
        begins = data.read(len(_PACKED))
    if not begins:
        return "this file is empty", _CHANGED
    if begins == _PACKED:
        return "this is a spreadsheet and no CSV file", "open it and save it as CSV"
    return None


def _rows(records: Records, name: str) -> Iterator[CodeRow | LeftOut]:
    head = _head(records)
    if isinstance(head, str):
        yield LeftOut(name, records.line, records.line, head, _CHANGED)
        return
    empty = True
    for record in records.read(head.separator, head.width):
        empty = False
        row = _row(record, head) if isinstance(record, Record) else record.why
        if isinstance(row, CodeRow):
            yield row
        else:
            yield LeftOut(name, record.line, record.line, row, _ROW)
    if empty:
        yield LeftOut(
            name, records.line, records.line, "no row stands below the first line", _CHANGED
        )


def _row(record: Record, head: Head) -> CodeRow | str:
    if (number := len(record.cells)) != head.width:
        return f"this line has {number} cells, and the first line has {head.width}"
    return code_row(record.cells, head.at)


def _head(records: Records) -> Head | str:
    """What the first line says, or why it is no first line of such a file."""
    line = records.first()
    if line.lower().startswith("sep="):  # which spreadsheets write above it
        line = records.first()
    heads = [_with(separator, line) for separator in _SEPARATORS]
    best = max(heads, key=lambda head: len(head.at))
    if not best.at:
        return "this is no CSV file of finish codes: its first line names none of their columns"
    missing = [column for column in WANTED if column not in best.at]
    if missing:
        return f"the column `{missing[0]}` is missing"
    return best


def _with(separator: str, line: str) -> Head:
    cells = [cell.strip().lower() for cell in cells_of(line, separator)]
    at = {name: cells.index(name) for name in WANTED if cells.count(name) == 1}
    return Head(separator, len(cells), at)
