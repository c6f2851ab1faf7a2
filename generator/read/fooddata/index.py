"""The index of foods on this computer: an SQLite file outside git, made again at will."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from decimal import Decimal
from hashlib import sha256
from pathlib import Path

from generator.model.food_record import FIGURES, LABEL_DATA, FoodRecord, Label, RecordPortion
from generator.problems import LessonError, Place, Problem
from generator.read.fooddata.amounts import unpacked
from generator.read.fooddata.gtin import code
from generator.read.fooddata.layout import KEPT, KINDS, NUTRIENTS

INDEX = ".cache/foods.sqlite"
SCHEMA = """
CREATE TABLE release (
    data_type TEXT PRIMARY KEY, title TEXT NOT NULL, published TEXT NOT NULL,
    first INTEGER NOT NULL, last INTEGER NOT NULL -- of its numbers in food
) WITHOUT ROWID;
CREATE TABLE food ( -- numbered in the order a search shows them: by kind, then the shortest first
    number INTEGER PRIMARY KEY, fdc INTEGER NOT NULL, data_type TEXT NOT NULL,
    description TEXT NOT NULL, category TEXT NOT NULL, code TEXT NOT NULL,
    serving TEXT NOT NULL, size TEXT NOT NULL, unit TEXT NOT NULL
);
CREATE TABLE value (fdc INTEGER NOT NULL, amounts TEXT NOT NULL); -- as text they stay exact
CREATE TABLE portion (
    fdc INTEGER, number INTEGER, wording TEXT NOT NULL, grams TEXT NOT NULL,
    PRIMARY KEY (fdc, number)
) WITHOUT ROWID;
CREATE VIRTUAL TABLE word USING fts5(
    description, content = 'food', content_rowid = 'number', detail = 'none',
    tokenize = "unicode61 remove_diacritics 2"
);
CREATE VIRTUAL TABLE term USING fts5vocab(word, row);
"""
INDEXES = """
CREATE UNIQUE INDEX food_fdc ON food (fdc);
CREATE INDEX food_code ON food (code) WHERE code <> '';
CREATE INDEX value_fdc ON value (fdc);
"""
"""Made when all is in, which takes a fraction of keeping them while it comes."""
VERSION = int(sha256(f"{SCHEMA}{INDEXES}{KEPT}".encode()).hexdigest()[:7], 16)
"""Made of the schema and of what is kept: an index from before a measure came knows nothing of it."""
_FOOD = """
SELECT fdc, description, category, code, serving, size, unit, data_type, title, published
FROM food JOIN release USING (data_type) WHERE
"""


def has_index(root: Path) -> bool:
    """Whether anything was imported on this computer yet."""
    return (root / INDEX).is_file()


@contextmanager
def opened_index(root: Path) -> Iterator[sqlite3.Connection]:
    """The index for reading.

    Raises:
        LessonError: there is none, or it cannot be read.
    """
    if not has_index(root):
        raise LessonError(
            [
                Problem(
                    Place(INDEX),
                    "there is no index of foods on this computer yet",
                    "get a CSV download at https://fdc.nal.usda.gov/download-datasets, then "
                    "run: python3 generator foods import FILE.zip",
                )
            ]
        )
    try:
        address = f"{(root / INDEX).resolve().as_uri()}?mode=ro"
        with closing(sqlite3.connect(address, uri=True)) as index:
            _refuse_other_versions(index)
            yield index
    except sqlite3.DatabaseError:
        hint = "delete it and run again: python3 generator foods import FILE.zip"
        raise LessonError(
            [Problem(Place(INDEX), "the index of foods cannot be read", hint)]
        ) from None


def _refuse_other_versions(index: sqlite3.Connection) -> None:
    if version(index) != VERSION:
        what = "the index of foods was made by another version of the program"
        hint = "take the download in again: python3 generator foods import FILE.zip"
        raise LessonError([Problem(Place(INDEX), what, hint)])


def version(index: sqlite3.Connection) -> int:
    """The schema an index was made with; 0 for a file that is not ours."""
    return int(index.execute("PRAGMA user_version").fetchone()[0])


def titles(index: sqlite3.Connection) -> tuple[str, ...]:
    """The kinds of food the index holds, such as ``SR Legacy``."""
    return tuple(title for (title,) in index.execute("SELECT title FROM release ORDER BY title"))


def record(index: sqlite3.Connection, fdc: int) -> FoodRecord | None:
    """All that is kept of one record; nothing where the index does not hold it."""
    return _record(index, index.execute(f"{_FOOD} fdc = ?", (fdc,)).fetchone())


def numbered(index: sqlite3.Connection, number: int) -> FoodRecord | None:
    """All that is kept of the food with a number of the index's own."""
    return _record(index, index.execute(f"{_FOOD} number = ?", (number,)).fetchone())


def called(index: sqlite3.Connection, typed: str) -> tuple[FoodRecord, ...]:
    """Records called by a number: by their FDC id, or else by a GTIN, a food code, an NDB number.

    A label that changed is a new record with the same GTIN; the newest of each kind is given.
    """
    known_as = code(typed)
    if typed.strip() == known_as and (found := record(index, int(known_as))) is not None:
        return (found,)
    rows = index.execute(f"{_FOOD} code = ? AND code <> '' ORDER BY fdc", (known_as,)).fetchall()
    newest = {row[7]: row for row in rows}
    return tuple(found for row in newest.values() if (found := _record(index, row)) is not None)


def _record(index: sqlite3.Connection, row: tuple[object, ...] | None) -> FoodRecord | None:
    if row is None:
        return None
    fdc, description, category, known_as, serving, size, unit, data_type, title, published = row
    amounts: dict[int, str] = {}
    for (text,) in index.execute("SELECT amounts FROM value WHERE fdc = ?", (fdc,)):
        amounts |= unpacked(text)
    chosen = {
        name: next((one for one in NUTRIENTS[name] if one in amounts), None) for name in FIGURES
    }
    label = None
    if KINDS[str(data_type)].branded and unit in {"g", "ml"}:
        label = Label(str(serving), Decimal(str(size) or 0), unit)
    return FoodRecord(
        int(str(fdc)),
        str(description),
        str(category),
        f"{f'{LABEL_DATA} in ' if label else ''}USDA FoodData Central, {title}, {published}",
        {name: Decimal(amounts[id_]) if id_ else None for name, id_ in chosen.items()},
        _portions(index, fdc, label),
        {name: id_ for name, id_ in chosen.items() if id_},
        str(known_as),
        label,
    )


def _portions(
    index: sqlite3.Connection, fdc: object, label: Label | None
) -> tuple[RecordPortion, ...]:
    if label is not None:
        weighed = label.unit == "g" and label.size > 0
        return (RecordPortion(label.wording, label.size),) if weighed else ()
    rows = index.execute("SELECT wording, grams FROM portion WHERE fdc = ? ORDER BY number", (fdc,))
    return tuple(RecordPortion(wording, Decimal(grams)) for wording, grams in rows)
