"""The engine that counts: rows go in as they are read, numbers come out; the only file that knows it.

It keeps what it counts in little memory and, beyond that, in a folder of its own; its SQL is what
would run on a larger one.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import islice
from pathlib import Path
from typing import TYPE_CHECKING

from generator.model.tally import (
    Alike,
    LessonKey,
    Reach,
    RightAnswers,
    Same,
    StopDone,
    Tally,
    Twice,
)
from generator.read.finish_codes.row import CodeRow

if TYPE_CHECKING:
    from duckdb import DuckDBPyConnection

PACKAGE = "duckdb"
"""What brings the engine; optional, for only a report needs it."""
MEGABYTES = 25
"""That it is to fetch."""
_AT_ONCE = 5_000
_MEMORY = "100MB"
_TABLE = """
CREATE TABLE codes (
  file INTEGER, line INTEGER, lesson VARCHAR, numbers VARCHAR, code VARCHAR,
  stops VARCHAR, pairs VARCHAR, answers VARCHAR, minutes INTEGER
)
"""
_INSERT = """
INSERT INTO codes
SELECT cells[1]::INTEGER, cells[2]::INTEGER, cells[3], cells[4], cells[5], cells[6], cells[7],
  cells[8], cells[9]::INTEGER
FROM (SELECT string_split(unnest(string_split(?, chr(10))), chr(9)) AS cells)
"""
_REACH = """
SELECT lesson, numbers, count(*), quantile_disc(minutes, 0.5)
FROM codes GROUP BY lesson, numbers ORDER BY lesson, numbers
"""
_STOPS = """
SELECT lesson, numbers, stop, count(*)
FROM (SELECT lesson, numbers, unnest(string_split(stops, ' ')) AS stop FROM codes WHERE stops <> '')
GROUP BY lesson, numbers, stop ORDER BY lesson, numbers, stop
"""
_TWICE = """
SELECT lesson, numbers, question,
  count(*) FILTER (told = 'rr'), count(*) FILTER (told = 'rw'),
  count(*) FILTER (told = 'wr'), count(*) FILTER (told = 'ww')
FROM (
  SELECT lesson, numbers, split_part(pair, '=', 1) AS question, split_part(pair, '=', 2) AS told
  FROM (SELECT lesson, numbers, unnest(string_split(pairs, ' ')) AS pair FROM codes WHERE pairs <> '')
)
GROUP BY lesson, numbers, question ORDER BY lesson, numbers, question
"""
_RIGHT = """
SELECT lesson, numbers, answer, count(*),
  count(*) FILTER (how = 'f'), count(*) FILTER (how = 'l')
FROM (
  SELECT lesson, numbers, split_part(one, '=', 1) AS answer, split_part(one, '=', 2) AS how
  FROM (SELECT lesson, numbers, unnest(string_split(answers, ' ')) AS one FROM codes WHERE answers <> '')
)
GROUP BY lesson, numbers, answer ORDER BY lesson, numbers, answer
"""
_SAME = """
SELECT lesson, numbers, sum(times)
FROM (
  SELECT lesson, numbers, count(*) AS times
  FROM codes GROUP BY file, lesson, numbers, code HAVING count(*) > 1
)
GROUP BY lesson, numbers ORDER BY lesson, numbers
"""
_ALIKE = """
WITH sent AS (
  SELECT file, count(*) AS codes, count(DISTINCT code) AS kinds,
    string_agg(code, ' ' ORDER BY line) || ' ' AS told
  FROM codes GROUP BY file
), beside AS (
  SELECT file, codes, kinds, told,
    lead(file) OVER in_order AS next, lead(told) OVER in_order AS longer
  FROM sent WINDOW in_order AS (ORDER BY told, file)
)
SELECT least(file, next), greatest(file, next), codes
FROM beside WHERE codes >= 3 AND kinds >= 2 AND starts_with(longer, told)
ORDER BY 1, 2
"""
"""A file is one that was sent before, or goes on where that one ends. In their order, what a file goes
on from stands right before it. Fewer than three codes, or all of them equal, say nothing."""


class NoEngineError(Exception):
    """The engine is not installed."""


def counted(rows: Iterable[tuple[int, CodeRow]], scratch: Path) -> Tally:
    """Count rows; none of them is kept.

    Args:
        rows: each with the place of its file among all files.
        scratch: a folder in which the engine may lay what does not fit its memory.

    Raises:
        NoEngineError: it is not installed.
    """
    try:
        import duckdb  # noqa: PLC0415  # optional, and slow to load
    except ModuleNotFoundError:
        raise NoEngineError from None
    settings: dict[str, str | bool | int | float | list[str]] = {
        "memory_limit": _MEMORY,
        "threads": 2,
        "temp_directory": str(scratch),
        "autoinstall_known_extensions": False,  # nothing is fetched
        "autoload_known_extensions": False,
    }
    with duckdb.connect(":memory:", config=settings) as engine:
        engine.execute(_TABLE)
        for piece in _pieces(rows):
            engine.execute(_INSERT, [piece])
        return _tally(engine)


def _pieces(rows: Iterable[tuple[int, CodeRow]]) -> Iterator[str]:
    """Rows as text, some thousand at once: a cell between tabs, a row a line."""
    lines = (
        f"{file}\t{number}\t{row.lesson}\t{row.numbers}\t{row.code}\t{row.stops}\t{row.pairs}\t{row.answers}\t{row.minutes}"
        for number, (file, row) in enumerate(rows)
    )
    while piece := "\n".join(islice(lines, _AT_ONCE)):
        yield piece


def _tally(engine: DuckDBPyConnection) -> Tally:
    def asked(question: str) -> list[tuple[object, ...]]:
        found: list[tuple[object, ...]] = engine.execute(question).fetchall()
        return found

    return Tally(
        reach=tuple(Reach(_key(row), *map(_whole, row[2:])) for row in asked(_REACH)),
        stops=tuple(StopDone(_key(row), str(row[2]), _whole(row[3])) for row in asked(_STOPS)),
        twice=tuple(Twice(_key(row), str(row[2]), *map(_whole, row[3:])) for row in asked(_TWICE)),
        right=tuple(
            RightAnswers(_key(row), str(row[2]), *map(_whole, row[3:])) for row in asked(_RIGHT)
        ),
        same=tuple(Same(_key(row), _whole(row[2])) for row in asked(_SAME)),
        alike=tuple(Alike(*map(_whole, row)) for row in asked(_ALIKE)),
    )


def _key(row: tuple[object, ...]) -> LessonKey:
    return LessonKey(str(row[0]), str(row[1]))


def _whole(cell: object) -> int:
    return int(str(cell))
