"""A FoodData Central CSV download into the index: all of it, or nothing at all.

The rows stream from the zip into a new file beside the index, which takes its place at the end.
Kinds of food live side by side in it; importing a kind again replaces that kind alone.
"""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

from generator.model.food_record import Imported
from generator.read.fooddata.archive import AGAIN, opened
from generator.read.fooddata.found import Found
from generator.read.fooddata.index import INDEX, SCHEMA, VERSION, version
from generator.read.fooddata.layout import KINDS
from generator.read.fooddata.rows import Seen, foods, portions, values
from generator.read.fooddata.table import Download

Progress = Callable[[int, int], None]
"""Told how many bytes were read since it was last told, and how many there are in all."""


def import_foods(root: Path, file: Path, progress: Progress) -> tuple[Imported, ...]:
    """Read a download as it comes; returns what the index holds of each kind in it.

    Raises:
        LessonError: with up to twenty problems of the zip; the old index stays as it was.
    """
    found = Found(file)
    index, fresh = root / INDEX, root / f"{INDEX}.new"
    try:
        fresh.parent.mkdir(parents=True, exist_ok=True)
        with opened(file, found) as (archive, members):
            total = sum(member.file_size for member in members.values())
            download = Download(archive, members, found, lambda read: progress(read, total))
            _begin(index, fresh)
            with closing(sqlite3.connect(fresh, isolation_level=None)) as new:
                imported = _fill(new, download)
        fresh.replace(index)
    except (sqlite3.OperationalError, OSError) as error:
        hint = "look for room on the disk, and whether the folder .cache can be written"
        raise found.stop(f"the index of foods cannot be written ({error})", hint) from None
    finally:
        if fresh.is_file():
            fresh.unlink()
    return imported


def _begin(index: Path, fresh: Path) -> None:
    """Start from the foods of other kinds; from nothing where the old index is damaged or older."""
    fresh.unlink(missing_ok=True)
    try:
        with closing(sqlite3.connect(index)) as old:
            usable = version(old) == VERSION
            usable = usable and old.execute("PRAGMA quick_check").fetchone() == ("ok",)
    except sqlite3.Error:
        usable = False
    if usable:
        shutil.copyfile(index, fresh)
        return
    with closing(sqlite3.connect(fresh)) as new:
        new.executescript(SCHEMA)
        new.execute(f"PRAGMA user_version = {VERSION:d}")


def _fill(new: sqlite3.Connection, download: Download) -> tuple[Imported, ...]:
    # A file that is thrown away when anything goes wrong needs no journal and no waiting.
    new.executescript("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF;")
    new.execute("BEGIN")
    seen = Seen()
    _take_foods(new, download, seen)
    _take_values(new, download, seen)
    new.executemany("INSERT INTO portion VALUES (?, ?, ?, ?)", portions(download, seen))
    download.found.settle()
    new.executemany(
        "INSERT OR REPLACE INTO release VALUES (?, ?, ?)",
        [(kind, KINDS[kind].title, day) for kind, day in seen.published.items()],
    )
    new.execute("INSERT INTO word (word) VALUES ('optimize')")
    new.execute("COMMIT")
    return tuple(_imported(new, kind, seen) for kind in sorted(seen.published))


def _take_foods(new: sqlite3.Connection, download: Download, seen: Seen) -> None:
    new.execute("CREATE TEMP TABLE fresh (fdc INTEGER, data_type, description, category)")
    new.executemany("INSERT INTO fresh VALUES (?, ?, ?, ?)", foods(download, seen))
    if not seen.kinds:
        others = ", ".join(sorted(seen.others)[:5]) or "nothing"
        titles = ", ".join(kind.title for kind in KINDS.values())
        what = f"no food of {titles} is in this zip; it holds {others}"
        hint = "for a package, write its label's value in the lesson with `value:` and `source:`"
        raise download.found.stop(what, hint, "food.csv")
    download.found.settle()
    for kind in seen.published:
        for table, key in (("value", "fdc"), ("portion", "fdc"), ("word", "rowid")):
            old = "(SELECT fdc FROM food WHERE data_type = ?)"
            new.execute(f"DELETE FROM {table} WHERE {key} IN {old}", (kind,))  # noqa: S608  # names from the line above
        new.execute("DELETE FROM food WHERE data_type = ?", (kind,))
    _refuse_taken(new, download)
    new.execute("INSERT INTO food SELECT * FROM fresh")
    new.execute("INSERT INTO word (rowid, description) SELECT fdc, description FROM fresh")


def _refuse_taken(new: sqlite3.Connection, download: Download) -> None:
    """One id is one record, across all kinds."""
    for fdc, kind in new.execute(
        "SELECT fdc, food.data_type FROM food JOIN fresh USING (fdc) ORDER BY fdc LIMIT 20"
    ).fetchall():
        what = f"the food {fdc} is in the index already, from {KINDS[kind].title}"
        download.found.add(what, AGAIN, "food.csv")
    download.found.settle()


def _take_values(new: sqlite3.Connection, download: Download, seen: Seen) -> None:
    new.execute("CREATE TEMP TABLE given (fdc INTEGER, figure, rank, nutrient, amount, line)")
    new.executemany("INSERT INTO given VALUES (?, ?, ?, ?, ?, ?)", values(download, seen))
    for fdc, nutrient, line in new.execute(
        "SELECT fdc, nutrient, max(line) FROM given GROUP BY fdc, nutrient "
        "HAVING count(DISTINCT amount) > 1 ORDER BY 3 LIMIT 20"
    ).fetchall():
        what = f"the food {fdc} has two different amounts of nutrient {nutrient}"
        download.found.add(what, AGAIN, "food_nutrient.csv", line)
    # With min(), SQLite takes the other columns from the row that holds the minimum:
    # https://www.sqlite.org/lang_select.html#bareagg
    new.execute(
        "INSERT INTO value SELECT fdc, figure, nutrient, amount FROM "
        "(SELECT fdc, figure, nutrient, amount, min(rank) FROM given GROUP BY fdc, figure)"
    )


def _imported(new: sqlite3.Connection, kind: str, seen: Seen) -> Imported:
    def count(table: str) -> int:
        query = f"SELECT count(*) FROM {table} JOIN food USING (fdc) WHERE data_type = ?"  # noqa: S608  # names from below
        return int(new.execute(query, (kind,)).fetchone()[0])

    foods_kept = sum(one == kind for one in seen.kinds.values())
    return Imported(
        KINDS[kind].title,
        seen.published[kind],
        foods_kept,
        count("value"),
        count("portion"),
        seen.weightless[kind],
        seen.unmeasured[kind],
    )
