"""A FoodData Central CSV download into the index: all of it, or nothing at all.

The rows stream from the zip into a new file beside the index, which takes its place at the end.
Kinds of food live side by side in it; importing a kind again replaces that kind alone.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterable
from contextlib import closing
from pathlib import Path

from generator.model.food_record import Imported
from generator.read.fooddata.amounts import packed, refuse_second, unpacked, values
from generator.read.fooddata.archive import AGAIN, opened
from generator.read.fooddata.found import Found
from generator.read.fooddata.index import INDEX, INDEXES, SCHEMA, VERSION, version
from generator.read.fooddata.labels import Label, labels
from generator.read.fooddata.layout import KINDS
from generator.read.fooddata.rows import codes, foods, portions, shelves
from generator.read.fooddata.seen import Seen
from generator.read.fooddata.table import Download

Progress = Callable[[int, int], None]
"""Told how many bytes were read since it was last told, and how many there are in all."""
_ROOM = 48_000
"""KiB of pages and of rows to be sorted that SQLite keeps in memory; what is more it writes out."""
_LOOSE = """
CREATE TEMP TABLE loose (
    fdc INTEGER PRIMARY KEY, rank INTEGER, data_type, description, category
);
CREATE TEMP TABLE about (fdc INTEGER PRIMARY KEY, code, category, serving, size, unit);
"""
"""What the files say of a food, each on its own, until all are read."""
_FOODS = """
INSERT INTO food (fdc, data_type, description, category, code, serving, size, unit)
SELECT loose.fdc, data_type, description,
       coalesce(nullif(loose.category, ''), about.category, ''), coalesce(about.code, ''),
       coalesce(serving, ''), coalesce(size, ''), coalesce(unit, '')
FROM loose LEFT JOIN about USING (fdc) ORDER BY rank, length(description), loose.fdc
"""


def import_foods(root: Path, file: Path, progress: Progress) -> tuple[Imported, ...]:
    """Read a download as it comes; returns what the index holds of each kind in it.

    Raises:
        LessonError: with up to twenty problems of the zip; the old index stays as it was.
    """
    found = Found(file)
    index, fresh = root / INDEX, root / f"{INDEX}.new"
    try:
        fresh.parent.mkdir(parents=True, exist_ok=True)
        fresh.unlink(missing_ok=True)
        with opened(file, found) as (archive, members):
            total = sum(member.file_size for member in members.values())
            download = Download(archive, members, found, lambda read: progress(read, total))
            with closing(sqlite3.connect(fresh, isolation_level=None)) as new:
                seen = _fill(new, download, index)
        fresh.replace(index)
    except (sqlite3.OperationalError, OSError) as error:
        hint = "look for room on the disk, and whether the folder .cache can be written"
        raise found.stop(f"the index of foods cannot be written ({error})", hint) from None
    finally:
        if fresh.is_file():
            fresh.unlink()
    return tuple(_imported(kind, seen) for kind in sorted(seen.published))


def _fill(new: sqlite3.Connection, download: Download, index: Path) -> Seen:
    # A file that is thrown away when anything goes wrong needs no journal and no waiting.
    for pragma in ("journal_mode = OFF", "synchronous = OFF", f"cache_size = -{_ROOM}"):
        new.execute(f"PRAGMA {pragma}")
    new.executescript(SCHEMA + _LOOSE)
    new.execute(f"PRAGMA user_version = {VERSION:d}")
    _attach(new, index)
    new.execute("BEGIN")
    seen = Seen()
    titles = shelves(download)
    _take_foods(new, download, foods(download, seen, titles), seen)
    _take_about(new, codes(download, seen, titles), labels(download, seen), seen)
    new.executemany("INSERT INTO value VALUES (?, ?)", values(download, seen))
    new.executemany("INSERT INTO portion VALUES (?, ?, ?, ?)", portions(download, seen))
    download.found.settle()
    _take_over(new, seen)
    new.execute(_FOODS)
    _take_releases(new, seen)
    for statement in INDEXES.strip().splitlines():
        new.execute(statement)
    _join_pieces(new, download, seen)
    new.execute("INSERT INTO word (word) VALUES ('rebuild')")
    new.execute("COMMIT")
    return seen


def _attach(new: sqlite3.Connection, index: Path) -> None:
    """Lay the old index beside the new one; nothing where it is damaged or of another version."""
    try:
        address = f"{index.resolve().as_uri()}?mode=ro"  # else a missing one would be begun
        with closing(sqlite3.connect(address, uri=True)) as old:
            usable = version(old) == VERSION
            usable = usable and old.execute("PRAGMA quick_check").fetchone() == ("ok",)
    except sqlite3.Error:
        usable = False
    if usable:
        new.execute("ATTACH ? AS old", (str(index),))
        return
    new.execute("ATTACH ':memory:' AS old")
    for table in ("release", "food", "value", "portion"):
        new.execute(f"CREATE TABLE old.{table} AS SELECT * FROM main.{table}")


def _take_foods(
    new: sqlite3.Connection,
    download: Download,
    rows: Iterable[tuple[int, str, str, str]],
    seen: Seen,
) -> None:
    ranks = {kind: rank for rank, kind in enumerate(KINDS)}
    new.executemany(
        "INSERT INTO loose VALUES (?, ?, ?, ?, ?)",
        ((fdc, ranks[kind], kind, *rest) for fdc, kind, *rest in rows),
    )
    if not seen.published:
        others = ", ".join(sorted(seen.others)[:5]) or "nothing"
        titles = ", ".join(kind.title for kind in KINDS.values())
        what = f"no food of {titles} is in this zip; it holds {others}"
        hint = "for a package, write its label's value in the lesson with `value:` and `source:`"
        raise download.found.stop(what, hint, "food.csv")
    download.found.settle()
    for fdc, kind in new.execute(
        f"SELECT fdc, data_type FROM old.food WHERE {_stays(seen)} "
        "AND fdc IN (SELECT fdc FROM loose) ORDER BY fdc LIMIT 20"
    ).fetchall():
        what = f"the food {fdc} is in the index already, from {KINDS[kind].title}"
        download.found.add(what, AGAIN, "food.csv")
    download.found.settle()


def _take_about(
    new: sqlite3.Connection,
    unbranded: Iterable[tuple[int, str, str]],
    branded: Iterable[Label],
    seen: Seen,
) -> None:
    code_alone = "INSERT OR REPLACE INTO about (fdc, code, category) VALUES (?, ?, ?)"
    new.executemany(code_alone, unbranded)
    new.executemany("INSERT OR REPLACE INTO about VALUES (?, ?, ?, ?, ?, ?)", branded)
    for kind in (one.data_type for one in KINDS.values() if one.branded):
        unknown = "data_type = ? AND fdc NOT IN (SELECT fdc FROM about)"
        for (fdc,) in new.execute(f"SELECT fdc FROM loose WHERE {unknown}", (kind,)).fetchall():
            seen.drop(fdc, kind)
        new.execute(f"DELETE FROM loose WHERE {unknown}", (kind,))
        weighed = "SELECT count(*) FROM about WHERE unit = 'g' AND size <> ''"
        seen.portions[kind] = new.execute(weighed).fetchone()[0]


def _take_over(new: sqlite3.Connection, seen: Seen) -> None:
    """The foods of kinds that are not in this download, from the old index."""
    whens = " ".join(f"WHEN '{kind}' THEN {rank}" for rank, kind in enumerate(KINDS))
    rank, stays = f"CASE data_type {whens} END", _stays(seen)
    other = f"(SELECT fdc FROM old.food WHERE {stays})"
    for statement in (
        f"loose SELECT fdc, {rank}, data_type, description, category FROM old.food WHERE {stays}",
        f"about SELECT fdc, code, category, serving, size, unit FROM old.food WHERE {stays}",
        f"value SELECT * FROM old.value WHERE fdc IN {other}",
        f"portion SELECT * FROM old.portion WHERE fdc IN {other}",
    ):
        new.execute(f"INSERT INTO {statement}")


def _take_releases(new: sqlite3.Connection, seen: Seen) -> None:
    days = dict(new.execute("SELECT data_type, published FROM old.release")) | seen.published
    spans = "SELECT data_type, min(number), max(number) FROM food GROUP BY data_type"
    new.executemany(
        "INSERT INTO release VALUES (?, ?, ?, ?, ?)",
        [
            (kind, KINDS[kind].title, days[kind], first, last)
            for kind, first, last in new.execute(spans).fetchall()
        ],
    )


def _stays(seen: Seen) -> str:
    """Which foods of the old index are kept, as a condition."""
    return f"data_type NOT IN ({', '.join(repr(kind) for kind in seen.published)})"


def _join_pieces(new: sqlite3.Connection, download: Download, seen: Seen) -> None:
    """Put the amounts of a food together that stood apart in the file."""
    pieces = "SELECT fdc FROM value GROUP BY fdc HAVING count(*) > 1"
    for (fdc,) in new.execute(pieces).fetchall():
        held: dict[int, str] = {}
        kind = seen.kind(str(fdc))
        of_one = "SELECT amounts FROM value WHERE fdc = ? ORDER BY rowid"
        for (text,) in new.execute(of_one, (fdc,)):
            for nutrient, amount in unpacked(text).items():
                if held.setdefault(nutrient, amount) == amount or kind is None:
                    continue
                if not kind.branded:
                    refuse_second(download, fdc, nutrient)
                seen.unfit[kind.data_type] += 1
                held[nutrient] = ""
        new.execute("DELETE FROM value WHERE fdc = ?", (fdc,))
        joined = packed({nutrient: amount for nutrient, amount in held.items() if amount})
        new.execute("INSERT INTO value VALUES (?, ?)", (fdc, joined))
    download.found.settle()


def _imported(kind: str, seen: Seen) -> Imported:
    return Imported(
        KINDS[kind].title,
        seen.published[kind],
        seen.foods[kind],
        seen.values[kind],
        seen.portions[kind],
        seen.weightless[kind],
        seen.unmeasured[kind],
        seen.unfit[kind],
        seen.unsized[kind],
    )
