"""One CSV file inside the zip, row by row, with the line of everything that is wrong."""

from __future__ import annotations

import csv
import io
import re
import zipfile
import zlib
from collections.abc import Callable, Generator, Iterator
from dataclasses import dataclass, field
from decimal import Decimal
from functools import lru_cache
from operator import itemgetter
from typing import IO

from generator.read.fooddata.archive import AGAIN, Members, broken
from generator.read.fooddata.found import Found
from generator.read.fooddata.layout import OTHER_SPELLINGS

LARGEST_FIGURE = Decimal(100_000)
"""No weight in grams and no figure per 100 g of a real record comes near it."""
LEAST = Decimal(100)
"""What is left of 100 g cannot be less than minus all of it."""
_FIGURE = re.compile(r"(?:\d{1,9}(?:\.\d{0,20})?|\.\d{1,20})(?:[Ee][+-]?\d{1,2})?", re.ASCII)
"""Plain or as ``1.0E-4``; Python's own numbers would also take ``nan``, ``1_0`` and other digits."""
_WHOLE = re.compile(r"[1-9]\d{0,11}", re.ASCII)
_STEP = 1 << 14  # rows between two reports of progress

_OFTEN = 1 << 16  # cells whose figure is remembered: labels say the same few again and again

Row = tuple[int, tuple[str, ...]]
"""Line, counted from 1, and the wanted cells in the order they were asked for."""


@dataclass(frozen=True, slots=True)
class Download:
    """An opened zip on its way through."""

    archive: zipfile.ZipFile
    """Open, to be read from."""
    members: Members
    """Its tables, by name."""
    found: Found
    """Collects what is wrong with it."""
    progress: Callable[[int], None] = field(repr=False)
    """Told how many bytes were read since it was last told."""

    def rows(
        self, name: str, columns: tuple[str, ...], optional: tuple[str, ...] = ()
    ) -> Generator[Row, None, None]:
        """The wanted cells of every row; a cell of an optional column that is not there is empty.

        Raises:
            LessonError: a column is missing, or the file cannot be read to its end.
        """
        try:
            with self.archive.open(self.members[name]) as packed:
                yield from self._rows(name, packed, columns, optional)
        except UnicodeDecodeError:
            line = self._undecoded_line(name)
            raise self.found.stop("this line is not in UTF-8", AGAIN, name, line) from None
        except (zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, OSError):
            raise broken(self.found, name) from None

    def _rows(
        self, name: str, packed: IO[bytes], columns: tuple[str, ...], optional: tuple[str, ...]
    ) -> Iterator[Row]:
        reader = csv.reader(io.TextIOWrapper(packed, "utf-8-sig", newline=""), strict=True)
        told = 0
        try:
            header = next(reader, [])
            width, positions = len(header), self._positions(name, header, columns, optional)
            wanted = _cells(positions)
            for number, row in enumerate(reader):
                if len(row) == width:
                    row.append("")  # what an absent column points at
                    yield reader.line_num, wanted(row)
                elif row:
                    what = f"this line has {len(row)} cells, and the first line has {width}"
                    self.found.add(what, AGAIN, name, reader.line_num)
                if number % _STEP == 0:
                    self.progress(packed.tell() - told)
                    told = packed.tell()
        except csv.Error as error:
            what = f"a quote or a comma stands wrong here ({error})"
            raise self.found.stop(what, AGAIN, name, reader.line_num) from None
        self.progress(packed.tell() - told)

    def _positions(
        self, name: str, header: list[str], columns: tuple[str, ...], optional: tuple[str, ...]
    ) -> list[int]:
        spelled = [one if one in header else OTHER_SPELLINGS.get(one, one) for one in columns]
        missing = [column for column, at in zip(columns, spelled, strict=True) if at not in header]
        for column in missing:
            self.found.add(f"the column `{column}` is missing", AGAIN, name)
        if missing:
            self.found.settle()
        return [
            header.index(column) if column in header else len(header)
            for column in (*spelled, *optional)
        ]

    def _undecoded_line(self, name: str) -> int:
        """The first line that is not UTF-8, found by reading the file once more, as bytes."""
        with self.archive.open(self.members[name]) as packed:
            for number, line in enumerate(packed, 1):
                try:
                    line.decode("utf-8")
                except UnicodeDecodeError:
                    return number
        return 1

    def whole(self, cell: str, name: str, line: int, column: str) -> int | None:
        """An id; nothing, and a problem, where the cell holds something else."""
        if (id_ := whole(cell)) is not None:
            return id_
        self.found.add(f"`{column}` must be a whole number, not `{cell[:40]}`", AGAIN, name, line)
        return None

    def figure(self, cell: str, name: str, line: int, column: str) -> Decimal | None:
        """A figure of 0 or more; nothing, and a problem, where the cell holds something else."""
        if (read := figure(cell)) is not None:
            return read
        what = f"`{column}` must be a figure of 0 or more, not `{cell[:40]}`"
        self.found.add(what, AGAIN, name, line)
        return None


def _cells(positions: list[int]) -> Callable[[list[str]], tuple[str, ...]]:
    if len(positions) > 1:
        return itemgetter(*positions)  # a tuple of several, but the bare cell of one
    return lambda row: (row[positions[0]],)


def whole(cell: str) -> int | None:
    """An id; nothing where the cell holds something else."""
    return int(cell) if _WHOLE.fullmatch(cell) else None


def figure(cell: str) -> Decimal | None:
    """A figure of 0 or more; nothing where the cell holds something else."""
    if _FIGURE.fullmatch(cell) and (read := Decimal(cell)) < LARGEST_FIGURE:
        return read
    return None


@lru_cache(maxsize=_OFTEN)
def amount(cell: str) -> str:
    """A figure of 0 or more without idle zeros; empty where the cell holds none."""
    read = figure(cell)
    return "" if read is None else plain(read)


def difference(cell: str) -> str:
    """A figure that may also be negative, down to the 100 g that a food weighs; empty for none."""
    left = figure(cell.removeprefix("-"))
    if left is None or left >= LEAST:
        return ""
    return plain(-left if cell.startswith("-") else left)


def plain(figure: Decimal) -> str:
    """A figure without idle zeros: ``1.50`` as ``1.5``, ``1E+2`` as ``100``."""
    return format(figure.normalize(), "f") if figure else "0"
