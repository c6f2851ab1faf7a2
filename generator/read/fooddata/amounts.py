"""The amounts of ``food_nutrient.csv``, gathered by food: one pass, in the order of the file.

The file of all foods has 27 million rows. Those of one food follow each other, so one food at a
time is in memory; where they do not, a food comes in several pieces, and the index puts them
together.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import closing
from itertools import groupby

from generator.read.fooddata.archive import AGAIN
from generator.read.fooddata.layout import BELOW_ZERO, COLUMNS, Kind
from generator.read.fooddata.rows import nutrients
from generator.read.fooddata.seen import Seen
from generator.read.fooddata.table import Download, Row, amount, difference

_NAME = "food_nutrient.csv"


def values(download: Download, seen: Seen) -> Iterator[tuple[int, str]]:
    """Food and amounts per 100 g, as ``unpacked`` reads them."""
    reading = _Reading(download, seen, nutrients(download))
    with closing(download.rows(_NAME, COLUMNS[_NAME])) as every:
        for fdc, rows in groupby(every, _food):
            kind = seen.kind(fdc)
            if kind is not None:
                if held := reading.amounts(kind, fdc, rows):
                    seen.values[kind.data_type] += len(held)
                    yield int(fdc), packed(held)
            elif not seen.knows(fdc):
                for line, _ in rows:
                    download.whole(fdc, _NAME, line, "fdc_id")


def packed(amounts: dict[int, str]) -> str:
    """Amounts by nutrient id as one text, exact: ``1008:132 1003:8.86``."""
    return " ".join([f"{nutrient}:{amount}" for nutrient, amount in amounts.items()])


def unpacked(text: str) -> dict[int, str]:
    """Amounts by nutrient id."""
    pairs = (pair.split(":") for pair in text.split())
    return {int(nutrient): amount for nutrient, amount in pairs}


def refuse_second(download: Download, fdc: int, nutrient: int) -> None:
    """Tell that a nutrient has another amount further down, on the last line that has one."""
    known = {text for text, id_ in nutrients(download).items() if id_ == nutrient}
    rows = download.rows(_NAME, COLUMNS[_NAME])
    lines = [line for line, (text, id_, _) in rows if text == str(fdc) and id_ in known]
    _refuse_two(download, str(fdc), nutrient, lines[-1])


class _Reading:
    """Reads the rows of one food after another."""

    def __init__(self, download: Download, seen: Seen, known: dict[str, int]) -> None:
        self._download = download
        self._seen = seen
        self._known = known

    def amounts(self, kind: Kind, fdc: str, rows: Iterable[Row]) -> dict[int, str]:
        """Amounts by nutrient id; what is wrong is told, or of a label left out and counted."""
        held: dict[int, str] = {}
        for line, (_, text, cell) in rows:
            nutrient = self._known.get(text)
            if nutrient is None:
                self._check(text, line)
            elif cell:  # a blank is no value; it is not zero
                figure = amount(cell) or (difference(cell) if nutrient in BELOW_ZERO else "")
                if not figure:
                    self._refuse(kind, cell, line, nutrient)
                elif held.setdefault(nutrient, figure) != figure:
                    self._two(kind, fdc, nutrient, line)
                    if kind.branded:
                        held[nutrient] = ""
        return {nutrient: figure for nutrient, figure in held.items() if figure}

    def _check(self, nutrient: str, line: int) -> None:
        # An older nutrient number may carry a point: 269.3.
        if not nutrient.isdigit() and not nutrient.replace(".", "", 1).isdigit():
            self._download.whole(nutrient, _NAME, line, "nutrient_id")

    def _refuse(self, kind: Kind, cell: str, line: int, nutrient: int) -> None:
        if kind.branded:  # makers send labels in by the million, and some hold what cannot be
            self._seen.unfit[kind.data_type] += 1
        elif nutrient in BELOW_ZERO:
            what = f"`amount` must be a figure above -100, not `{cell[:40]}`"
            self._download.found.add(what, AGAIN, _NAME, line)
        else:
            self._download.figure(cell, _NAME, line, "amount")

    def _two(self, kind: Kind, fdc: str, nutrient: int, line: int) -> None:
        if kind.branded:
            self._seen.unfit[kind.data_type] += 1
        else:
            _refuse_two(self._download, fdc, nutrient, line)


def _refuse_two(download: Download, fdc: str, nutrient: int, line: int) -> None:
    what = f"the food {fdc} has two different amounts of nutrient {nutrient}"
    download.found.add(what, AGAIN, _NAME, line)


def _food(row: Row) -> str:
    return row[1][0]
