"""The index of foods on this computer: an SQLite file outside git, made again at will."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from decimal import Decimal
from hashlib import sha256
from pathlib import Path

from generator.model.food_record import FIGURES, FoodRecord, RecordPortion
from generator.problems import LessonError, Place, Problem
from generator.read.fooddata.layout import KEPT

INDEX = ".cache/foods.sqlite"
SCHEMA = """
CREATE TABLE release (
    data_type TEXT PRIMARY KEY, title TEXT NOT NULL, published TEXT NOT NULL
) WITHOUT ROWID;
CREATE TABLE food (
    fdc INTEGER PRIMARY KEY, data_type TEXT NOT NULL, description TEXT NOT NULL,
    category TEXT NOT NULL
);
CREATE TABLE value ( -- amounts are text, so that they stay exact
    fdc INTEGER, figure TEXT, nutrient INTEGER NOT NULL, amount TEXT NOT NULL,
    PRIMARY KEY (fdc, figure)
) WITHOUT ROWID;
CREATE TABLE portion (
    fdc INTEGER, number INTEGER, wording TEXT NOT NULL, grams TEXT NOT NULL,
    PRIMARY KEY (fdc, number)
) WITHOUT ROWID;
CREATE VIRTUAL TABLE word USING fts5(
    description, tokenize = "porter unicode61 remove_diacritics 2", prefix = '2 3'
);
"""
VERSION = int(sha256(f"{SCHEMA}{KEPT}".encode()).hexdigest()[:7], 16)
"""Made of the schema and of what is kept: an index from before a measure came knows nothing of it."""
_RELEASE = """
SELECT 'USDA FoodData Central, ' || title || ', ' || published FROM release WHERE data_type = ?
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
    found = index.execute(
        "SELECT description, category, data_type FROM food WHERE fdc = ?", (fdc,)
    ).fetchone()
    if found is None:
        return None
    description, category, data_type = found
    amounts = dict(index.execute("SELECT figure, amount FROM value WHERE fdc = ?", (fdc,)))
    portions = index.execute(
        "SELECT wording, grams FROM portion WHERE fdc = ? ORDER BY number", (fdc,)
    )
    return FoodRecord(
        fdc,
        description,
        category,
        index.execute(_RELEASE, (data_type,)).fetchone()[0],
        {name: Decimal(amounts[name]) if name in amounts else None for name in FIGURES},
        tuple(RecordPortion(wording, Decimal(grams)) for wording, grams in portions),
    )
