"""The library's figures against the records they came from."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path

from generator.model.food import Food, Portion
from generator.model.food_record import FoodRecord
from generator.model.library import Library
from generator.model.places import Path as DataPath
from generator.problems import LessonError, Place
from generator.read.files import read_text
from generator.read.fooddata.index import record, titles
from generator.read.fooddata.table import plain
from generator.read.library import FOODS
from generator.read.source import Data, Source, read_source

NO_VALUE = "no value"


@dataclass(frozen=True, slots=True)
class Change:
    """One figure the record gives differently now."""

    food: str
    """Id of the entry."""
    what: str
    """Its name, such as ``sodium``, or the record's wording of a portion, or ``release``."""
    old: str
    """As it stands in the file."""
    new: str
    """As the record has it."""
    place: Place
    """Where the old one stands."""


@dataclass(frozen=True, slots=True)
class Comparison:
    """What a newer release changes in the library."""

    changes: tuple[Change, ...]
    gone: tuple[str, ...]
    """Entries whose record is not in the index, though its kind of food is."""
    unread: tuple[str, ...]
    """Entries of a kind of food the index does not hold."""
    unweighed: tuple[str, ...]
    """Portions whose wording the record does not have any more, as ``id: wording``."""


def compare(root: Path, library: Library, index: sqlite3.Connection) -> Comparison:
    """Hold every entry of ``site_data/foods.yaml`` against its record; nothing is written."""
    text = read_text(root, FOODS)
    if not isinstance(text, str):
        raise LessonError([text])
    source, kinds = read_source(FOODS, text), titles(index)
    changes: list[Change] = []
    gone, unread, unweighed = [], [], []
    for food in library.foods.values():
        found = record(index, food.entry.fdc)
        if found is not None:
            changes += _changes(source, food, found)
            unweighed += [
                f"{food.id}: {portion.record}"
                for portion in food.entry.portions
                if not _weights(found, portion)
            ]
        elif any(f", {kind}, " in food.release for kind in kinds):
            gone.append(food.id)
        else:
            unread.append(food.id)
    return Comparison(tuple(changes), tuple(gone), tuple(unread), tuple(unweighed))


def _changes(source: Source, food: Food, found: FoodRecord) -> Iterator[Change]:
    for name, new in found.per_100g.items():
        old = getattr(food.entry.per_100g, name)
        if old != (NO_VALUE if new is None else new):
            said = NO_VALUE if new is None else plain(new)
            yield _change(source, food, name, ("per_100g", name), said)
    for number, portion in enumerate(food.entry.portions):
        weights = _weights(found, portion)
        # Some records weigh one wording twice; which one was meant, only the old weight can say.
        if weights and portion.grams not in weights:
            path = ("portions", number, "grams")
            yield _change(source, food, portion.record, path, plain(weights[0]))
    if food.entry.release is not None and food.entry.release != found.release:
        yield _change(source, food, "release", ("release",), found.release)


def _change(source: Source, food: Food, what: str, path: DataPath, new: str) -> Change:
    inside: DataPath = ("foods", food.id, *path)
    return Change(food.id, what, str(_at(source.data, inside)), new, source.places.at(*inside))


def _at(data: Data, path: DataPath) -> Data:
    """The value at a path, as it is written in the file."""
    for part in path:
        if isinstance(data, dict) and isinstance(part, str):
            data = data.get(part)
        elif isinstance(data, list) and isinstance(part, int):
            data = data[part]
    return data


def _weights(found: FoodRecord, portion: Portion) -> list[Decimal]:
    """What the record says a wording weighs; grams weigh themselves."""
    wanted = " ".join(portion.record.split())
    if wanted == f"{portion.grams} g":
        return [portion.grams]
    return [one.grams for one in found.portions if one.wording == wanted]
