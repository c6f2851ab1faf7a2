"""Foods by words: first those of the library, then records of the index."""

from __future__ import annotations

import re
import sqlite3
import unicodedata
from collections.abc import Mapping
from functools import lru_cache

from generator.model.food import Food
from generator.model.food_record import FoundRecord
from generator.model.wording import FALLBACK

_WORD = re.compile(r"[^\W_]+")
_RECORDS = """
SELECT food.fdc, food.description,
       coalesce((SELECT amount FROM value WHERE fdc = food.fdc AND figure = 'energy'), ''),
       (SELECT count(*) FROM portion WHERE fdc = food.fdc),
       'USDA FoodData Central, ' || release.title || ', ' || release.published
FROM word JOIN food ON food.fdc = word.rowid JOIN release USING (data_type)
WHERE word MATCH ? ORDER BY bm25(word), length(food.description), food.fdc LIMIT ?
"""


@lru_cache(maxsize=4_096)  # each name of the library is asked for again with each word
def words_of(text: str) -> tuple[str, ...]:
    """The words of what somebody typed, small and without accents; signs of any kind are no words."""
    plain = unicodedata.normalize("NFKD", text.lower())
    return tuple(_WORD.findall("".join(sign for sign in plain if not unicodedata.combining(sign))))


def find_records(index: sqlite3.Connection, wanted: str, most: int) -> tuple[FoundRecord, ...]:
    """Records that hold every word, or a word that begins with it; the best first."""
    words = words_of(wanted)
    if not words:
        return ()
    # Each word goes in quotes, where FTS5 takes AND, NEAR, * and : for plain text.
    query = " ".join(f'"{word}"*' for word in words)
    return tuple(FoundRecord(*row) for row in index.execute(_RECORDS, (query, most)))


def find_in_library(foods: Mapping[str, Food], wanted: str, most: int) -> tuple[Food, ...]:
    """Foods of the library whose names in any language, or whose record, hold every word."""
    words = words_of(wanted)
    ranked = [
        (rank, len(food.name(FALLBACK).words), id_)
        for id_, food in foods.items()
        if words and (rank := _rank(food, words)) is not None
    ]
    return tuple(foods[id_] for _, _, id_ in sorted(ranked)[:most])


def nearest_in_library(foods: Mapping[str, Food], wanted: str, most: int) -> tuple[Food, ...]:
    """Foods that fit best, and none that fits in a worse way: a pear is no pearled barley."""
    words = words_of(wanted)
    found = find_in_library(foods, wanted, most)
    near = [
        (_LIKE.get(rank, rank), food) for food in found if (rank := _rank(food, words)) is not None
    ]
    best = min((rank for rank, _ in near), default=0)
    return tuple(food for rank, food in near if rank == best)


_LIKE = {0: 1}
"""A name that is exactly the words and one that has them among others are alike near."""


def _rank(food: Food, words: tuple[str, ...]) -> int | None:
    """0 when a name is exactly that, 1 when it has these words, 2 when its words begin so, 3 when the record's do."""
    names = [words_of(name) for name in (*food.entry.names.values(), food.id)]
    if words in names:
        return 0
    if any(set(map(_stem, words)) <= set(map(_stem, name)) for name in names):
        return 1
    if any(_holds(name, words) for name in names):
        return 2
    return 3 if _holds(words_of(food.entry.record), words) else None


def _holds(text: tuple[str, ...], words: tuple[str, ...]) -> bool:
    return all(any(have.startswith(_stem(word)) for have in text) for word in words)


def _stem(word: str) -> str:
    """Beans also finds bean."""
    return word[:-1] if len(word) > 3 and word.endswith("s") else word
