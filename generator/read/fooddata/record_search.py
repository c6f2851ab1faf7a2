"""Records of the index by words, the best first, and quickly among two million.

The index numbers its foods in the order they are shown, so the first hits of a question are the
ones that are wanted, and the rest is only counted.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import islice

from generator.model.food_record import FoodRecord
from generator.read.fooddata.index import numbered
from generator.read.fooddata.search import Fit
from generator.read.fooddata.words import forms, slips, stem, words_of

LOOKED = 20_000
"""Records of one kind that are opened where a value is asked for; more would take seconds."""
_BEGINNING = 3
"""Letters of a word that may be the beginning of another; fewer begin half of all words."""
_NUMBERS = "SELECT rowid FROM word WHERE word MATCH ? AND rowid BETWEEN ? AND ? ORDER BY rowid"
_COUNT = "SELECT count(*) FROM word WHERE word MATCH ? AND rowid BETWEEN ? AND ?"
_KINDS = "SELECT data_type, first, last FROM release ORDER BY first"


@dataclass(frozen=True, slots=True)
class Records:
    """Records that fit, and how many more do."""

    found: tuple[tuple[Fit, FoodRecord], ...] = field(repr=False)
    """The best of each kind, kinds in the order of the index."""
    total: int
    """How many fit in all."""
    whole: bool
    """Whether all were looked at; else the total is of those that were."""


def find_records(
    index: sqlite3.Connection,
    wanted: str,
    most: int,
    suits: Callable[[FoodRecord], bool] | None = None,
) -> Records:
    """Records that hold every word, or a word that begins with it, or one that is a slip away.

    Args:
        index: as ``opened_index`` gives it.
        wanted: as somebody typed it.
        most: how many of each kind of food.
        suits: what else a record must do, such as hold so much sodium.
    """
    words = words_of(wanted)
    parts: list[Records] = []
    try:
        for _, first, last in index.execute(_KINDS).fetchall() if words else ():
            parts.append(_of_kind(index, words, (first, last), most, suits))
    except sqlite3.OperationalError:
        # SQLite knows fewer letters than Python: a word that it cuts in two cannot be asked for.
        return Records((), 0, whole=True)
    return Records(
        tuple(one for part in parts for one in part.found),
        sum(part.total for part in parts),
        all(part.whole for part in parts),
    )


def _of_kind(
    index: sqlite3.Connection,
    words: tuple[str, ...],
    span: tuple[int, int],
    most: int,
    suits: Callable[[FoodRecord], bool] | None,
) -> Records:
    asked = {Fit.WORDS: _all(words, _forms), Fit.BEGINNINGS: _all(words, _beginnings)}
    found = dict(_first(index, asked, span, LOOKED if suits else most))
    widest = asked[Fit.BEGINNINGS]
    if not found and (widest := _all(words, lambda word: _slips(index, word))):
        found = dict(_first(index, {Fit.SLIP: widest}, span, LOOKED if suits else most))
    records = (
        (fit, one) for number, fit in found.items() if (one := numbered(index, number)) is not None
    )
    fitting = [(fit, one) for fit, one in records if suits is None or suits(one)]
    kept = sorted(
        ((Fit.EXACT if words_of(one.description) == words else fit, one) for fit, one in fitting),
        key=lambda pair: pair[0],
    )
    if suits is not None:
        return Records(tuple(kept[:most]), len(kept), len(found) < LOOKED)
    total = index.execute(_COUNT, (widest, *span)).fetchone()[0] if found else 0
    return Records(tuple(kept[:most]), total, whole=True)


def _first(
    index: sqlite3.Connection, asked: dict[Fit, str], span: tuple[int, int], most: int
) -> Iterator[tuple[int, Fit]]:
    """Numbers of the first hits of each question, none of them twice."""
    seen: set[int] = set()
    for fit, question in asked.items():
        for (number,) in islice(index.execute(_NUMBERS, (question, *span)), most):
            if number not in seen and len(seen) < most:
                seen.add(number)
                yield number, fit


def _all(words: tuple[str, ...], said: Callable[[str], str]) -> str:
    """A question for foods that have each word in one of its ways."""
    return " AND ".join(f"({said(word)})" for word in words)


def _forms(word: str) -> str:
    # Each word goes in quotes, where FTS5 takes AND, NEAR, * and : for plain text.
    return " OR ".join(f'"{form}"' for form in forms(word))


def _beginnings(word: str) -> str:
    return f'{_forms(word)} OR "{stem(word)}"*' if len(word) >= _BEGINNING else _forms(word)


def _slips(index: sqlite3.Connection, word: str) -> str:
    """The word in its ways, and each word of the index that is one slip away."""
    near = sorted({form for slip in slips(word) for form in forms(slip)})
    question = f"SELECT term FROM term WHERE term IN ({', '.join('?' * len(near))})"  # noqa: S608  # question marks alone
    there = [f'"{term}"' for (term,) in index.execute(question, near)] if near else []
    return " OR ".join((_beginnings(word), *there))
