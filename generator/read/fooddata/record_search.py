"""Records of the index by words, the best first, and quickly among two million.

The index numbers its foods in the order they are shown, so the first hits of a question are the
ones that are wanted, and the rest is only counted.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from decimal import Decimal
from itertools import islice

from generator.model.food_record import FoodRecord
from generator.model.measure import Measure
from generator.read.fooddata.amounts import unpacked
from generator.read.fooddata.index import numbered
from generator.read.fooddata.layout import NUTRIENTS
from generator.read.fooddata.search import Fit
from generator.read.fooddata.words import forms, slips, stem, words_of

LOOKED = 30_000
"""Records of one kind that are looked at where a value is asked for; more would take seconds."""
_BEGINNING = 3
"""Letters of a word that may be the beginning of another; fewer begin half of all words."""
_NUMBERS = "SELECT rowid FROM word WHERE word MATCH ? AND rowid BETWEEN ? AND ? ORDER BY rowid"
_COUNT = "SELECT count(*) FROM word WHERE word MATCH ? AND rowid BETWEEN ? AND ?"
_LABELS = """
SELECT food.number, food.size, value.amounts
FROM word JOIN food ON food.number = word.rowid LEFT JOIN value USING (fdc)
WHERE word MATCH ? AND word.rowid BETWEEN ? AND ? ORDER BY word.rowid
"""
_KINDS = "SELECT data_type, first, last FROM release ORDER BY first"


@dataclass(frozen=True, slots=True)
class Bounds:
    """What one portion must hold."""

    measure: Measure
    """Of what."""
    at_least: Decimal | None
    """In the measure's unit, as a lesson shows it."""
    at_most: Decimal | None
    """Likewise."""
    suits: Callable[[FoodRecord], bool]
    """Whether a record has such a portion."""

    def may_suit(self, size: str, amounts: str) -> bool:
        """Whether a package may, by its label alone; anything else is left to ``suits``.

        Args:
            size: of the serving, in grams or millilitres; empty where there is no label.
            amounts: for a hundred of them, as the index has it.
        """
        if not size:
            return True
        held = unpacked(amounts)
        amount = next((held[id_] for id_ in NUTRIENTS[self.measure.value] if id_ in held), None)
        if amount is None:
            return False
        value, away = float(amount) * float(size) / 100, self._away
        return (self.at_least is None or value >= float(self.at_least) - away) and (
            self.at_most is None or value <= float(self.at_most) + away
        )

    @property
    def _away(self) -> float:
        """How far a value as it is shown may lie from what it was before."""
        rule = self.measure.entry.label
        return max(float(rule.zero_below), *(float(step.size) for step in rule.steps)) + 0.01


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
    index: sqlite3.Connection, wanted: str, most: int, bounds: Bounds | None = None
) -> Records:
    """Records that hold every word, or a word that begins with it, or one that is a slip away.

    Args:
        index: as ``opened_index`` gives it.
        wanted: as somebody typed it.
        most: how many of each kind of food.
        bounds: what a portion must hold beside.
    """
    words = words_of(wanted)
    parts: list[Records] = []
    try:
        for _, first, last in index.execute(_KINDS).fetchall() if words else ():
            parts.append(_of_kind(index, words, (first, last), most, bounds))
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
    bounds: Bounds | None,
) -> Records:
    asked = {Fit.WORDS: _all(words, _forms), Fit.BEGINNINGS: _all(words, _beginnings)}
    widest = asked[Fit.BEGINNINGS]
    if not _there(index, widest, span):
        widest = _all(words, lambda word: _slips(index, word))
        asked = {Fit.SLIP: widest}
    if bounds is not None:
        return _bounded(index, words, (widest, *span), most, bounds)
    found = _first(index, asked, span, most)
    total = index.execute(_COUNT, (widest, *span)).fetchone()[0]
    return Records(_opened(index, words, found), total, whole=True)


def _bounded(
    index: sqlite3.Connection,
    words: tuple[str, ...],
    question: tuple[str, int, int],
    most: int,
    bounds: Bounds,
) -> Records:
    rows = list(islice(index.execute(_LABELS, question), LOOKED))
    near = (number for number, size, amounts in rows if bounds.may_suit(size, amounts or ""))
    opened = (one for number in near if (one := numbered(index, number)) is not None)
    suiting = sorted(
        ((_fit(words, one), one) for one in opened if bounds.suits(one)), key=lambda pair: pair[0]
    )
    return Records(tuple(suiting[:most]), len(suiting), len(rows) < LOOKED)


def _fit(words: tuple[str, ...], record: FoodRecord) -> Fit:
    title = words_of(record.description)
    if title == words:
        return Fit.EXACT
    if all(not set(title).isdisjoint(forms(word)) for word in words):
        return Fit.WORDS
    begun = all(any(have.startswith(stem(word)) for have in title) for word in words)
    return Fit.BEGINNINGS if begun else Fit.SLIP


def _opened(
    index: sqlite3.Connection, words: tuple[str, ...], found: Iterable[tuple[int, Fit]]
) -> tuple[tuple[Fit, FoodRecord], ...]:
    """The records, those that are called exactly that before the others."""
    records = ((fit, one) for number, fit in found if (one := numbered(index, number)) is not None)
    fitting = (
        (Fit.EXACT if words_of(one.description) == words else fit, one) for fit, one in records
    )
    return tuple(sorted(fitting, key=lambda pair: pair[0]))


def _there(index: sqlite3.Connection, question: str, span: tuple[int, int]) -> bool:
    return index.execute(f"{_NUMBERS} LIMIT 1", (question, *span)).fetchone() is not None


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
