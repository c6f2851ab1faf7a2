"""The library's figures against the records they came from."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal
from pathlib import Path

from generator.model.food import FINEST, Food, Portion
from generator.model.food_record import FoodRecord
from generator.model.library import Library
from generator.model.places import Path as DataPath
from generator.problems import LessonError, Place
from generator.read.files import read_text
from generator.read.fooddata.index import record, titles
from generator.read.fooddata.table import plain
from generator.read.library import FOODS
from generator.read.overlay import lies_over
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
class Missing:
    """Figures an entry says nothing of, for it is older than the measures."""

    food: str
    """Id of the entry."""
    figures: Mapping[str, str]
    """What the record has, by name, such as ``calcium``."""
    last: str
    """The last figure of the entry, as it stands in the file; the new ones go behind it."""
    place: Place
    """Where that one stands."""
    opening: Place
    """Where the figures of the entry begin."""


@dataclass(frozen=True, slots=True)
class Comparison:
    """What the records change in the library."""

    changes: tuple[Change, ...]
    """Figures that differ."""
    missing: tuple[Missing, ...]
    """Entries that say nothing of some figures."""
    gone: tuple[str, ...]
    """Entries whose record is not in the index, though its kind of food is."""
    unread: tuple[str, ...]
    """Entries of a kind of food the index does not hold."""
    unweighed: tuple[str, ...]
    """Portions whose wording the record does not have any more, as ``id: wording``."""


def compare(root: Path, library: Library, index: sqlite3.Connection) -> Comparison:
    """Hold every entry of ``site_data/foods.yaml`` against its record; nothing is written.

    What the program's library has below it is not the site's to change.
    """
    if lies_over(root, FOODS) and not (root / FOODS).exists():
        return Comparison((), (), (), (), ())
    text = read_text(root, FOODS)
    if not isinstance(text, str):
        raise LessonError([text])
    source, kinds = read_source(FOODS, text), titles(index)
    changes: list[Change] = []
    missing: list[Missing] = []
    gone, unread, unweighed = [], [], []
    for food in library.foods.values():
        if not isinstance(_at(source.data, ("foods", food.id, "per_100g")), dict):
            continue
        found = record(index, food.entry.fdc)
        if found is not None:
            changes += _changes(source, food, found)
            missing += _missing(source, food, found)
            unweighed += [
                f"{food.id}: {portion.record}"
                for portion in food.entry.portions
                if not _weights(found, portion)
            ]
        elif any(f", {kind}, " in food.release for kind in kinds):
            gone.append(food.id)
        else:
            unread.append(food.id)
    return Comparison(tuple(changes), tuple(missing), tuple(gone), tuple(unread), tuple(unweighed))


def _changes(source: Source, food: Food, found: FoodRecord) -> Iterator[Change]:
    for name, new in found.per_100g.items():
        if food.entry.per_100g.gives(name) and food.entry.per_100g.value(name) != new:
            yield _change(source, food, name, ("per_100g", name), _said(new))
    for number, portion in enumerate(food.entry.portions):
        weights = _weights(found, portion)
        # Some records weigh one wording twice; which one was meant, only the old weight can say.
        if weights and portion.grams not in weights:
            path = ("portions", number, "grams")
            yield _change(source, food, portion.record, path, plain(weights[0]))
    if food.entry.release is not None and food.entry.release != found.release:
        yield _change(source, food, "release", ("release",), found.release)


def _missing(source: Source, food: Food, found: FoodRecord) -> Iterator[Missing]:
    missing = {
        name: _said(new)
        for name, new in found.per_100g.items()
        if not food.entry.per_100g.gives(name)
    }
    if missing:
        path: DataPath = ("foods", food.id, "per_100g")
        written = _at(source.data, path)
        name, value = list(written.items())[-1] if isinstance(written, dict) else ("", None)
        at = source.places.at
        yield Missing(food.id, missing, str(value), at(*path, name), at(*path))


def _said(value: Decimal | None) -> str:
    return NO_VALUE if value is None else plain(value)


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
    """What the record says a wording weighs, or that part of it; grams weigh themselves."""
    part, wanted = portion.of_record
    if wanted == f"{portion.grams} g":
        return [portion.grams]
    return [
        (one.grams * part.numerator / part.denominator).quantize(
            Decimal(1).scaleb(-FINEST), ROUND_HALF_UP
        )
        for one in found.portions
        if one.wording == wanted
    ]
