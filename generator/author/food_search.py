"""Foods that fit some words: of the library and of the records in one list, the best first."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

from generator.author.food_entry import usable_portions
from generator.compute.label import label_value
from generator.model.food import Food
from generator.model.food_record import FoodRecord
from generator.model.measure import Measure
from generator.model.wording import FALLBACK
from generator.read.fooddata.gtin import is_number, misread
from generator.read.fooddata.index import called, has_index, opened_index, record
from generator.read.fooddata.record_search import Bounds, Records, find_records
from generator.read.fooddata.search import Fit, find_in_library, title_fits
from generator.read.library import read_library

MEASURES = tuple(measure.value for measure in Measure)
"""What can be asked for."""


@dataclass(frozen=True, slots=True)
class Column:
    """One measure of the foods that are shown."""

    name: str
    """As it is said: ``saturated fat``."""
    unit: str
    """Such as ``mg``."""


@dataclass(frozen=True, slots=True)
class Asked:
    """What is asked for beside the words."""

    measure: Measure = Measure.ENERGY
    """Shown beside energy, and what the bounds are of."""
    at_least: Decimal | None = None
    """In one portion as a lesson shows it, in the measure's unit."""
    at_most: Decimal | None = None
    """Likewise."""

    @property
    def columns(self) -> tuple[Column, ...]:
        """What is shown of each food."""
        return tuple(Column(one.value.replace("_", " "), one.unit) for one in self.measures)

    @property
    def measures(self) -> tuple[Measure, ...]:
        """Energy, and what is asked for."""
        return tuple(dict.fromkeys((Measure.ENERGY, self.measure)))

    @property
    def bounded(self) -> bool:
        """Whether there is a bound."""
        return self.at_least is not None or self.at_most is not None

    def takes(self, value: Decimal | None) -> bool:
        """Whether a portion with this value is wanted; one without a value never is."""
        if not self.bounded:
            return True
        return (
            value is not None
            and (self.at_least is None or value >= self.at_least)
            and (self.at_most is None or value <= self.at_most)
        )


def asked_for(measure: str, at_least: Decimal | None, at_most: Decimal | None) -> Asked:
    """What is asked for, by the measure's name: one of ``MEASURES``."""
    return Asked(next(one for one in Measure if one.value == measure), at_least, at_most)


@dataclass(frozen=True, slots=True)
class FoundFood:
    """A food that fits."""

    call: str
    """What to give a lesson or the next command: an id of the library, or else an FDC id."""
    name: str
    """In the library's words, or the record's own."""
    amount: str
    """One portion: in the library as a lesson asks for it, else as its record has it."""
    values: tuple[Decimal | None, ...] = field(repr=False)
    """What the portion holds as a lesson shows it, a value for each of ``Asked.columns``; nothing
    where the record has none."""
    release: str
    """Where its figures come from."""
    in_library: bool
    """Whether the library has it."""
    package: bool
    """Whether it is a package and its values those of a label."""
    raw: bool = False
    """Of the library's: whether it is raw and eaten only cooked, so that no lesson can name it."""


@dataclass(frozen=True, slots=True)
class FoundFoods:
    """What fits what somebody looked for."""

    foods: tuple[FoundFood, ...]
    """The best first: foods without a brand before packages."""
    total: int
    """How many fit in all."""
    whole: bool
    """Whether all records were looked at; else the total is of those that were."""
    searched: bool
    """Whether there is an index to look into."""
    misread: bool
    """Whether a number was asked for whose last digit does not fit the others."""


@dataclass(frozen=True, slots=True)
class _Portion:
    """So much of a food, and what a hundred of its unit hold."""

    amount: str
    size: Fraction
    per_100: Mapping[Measure, Decimal | None]

    def value(self, measure: Measure) -> Decimal | None:
        held = self.per_100[measure]
        return (
            None if held is None else label_value(measure, Fraction(held) * self.size / 100).value
        )


def find_foods(root: Path, wanted: str, asked: Asked, most: int) -> FoundFoods:
    """Look by words, or by a number: an FDC id, a food code, or the GTIN below a barcode.

    Args:
        root: folder of the site.
        wanted: as somebody typed it.
        asked: what the food must hold.
        most: how many foods are wanted.

    Raises:
        LessonError: as ``read_library``, or the index cannot be read.
    """
    foods = read_library(root).foods
    if not has_index(root):
        ranked, total, whole = _of_library(foods, wanted, asked), 0, True
    else:
        with opened_index(root) as index:
            ranked, total, whole = _of_both(foods, index, wanted, asked, most)
    best = sorted(ranked, key=lambda one: one[:2])
    shown = tuple(found for _, _, found in best[:most])
    return FoundFoods(shown, max(total, len(ranked)), whole, has_index(root), misread(wanted))


_Ranked = list[tuple[bool, Fit, FoundFood]]
"""Whether it is a package, how it fits, and the food."""


def _of_library(foods: Mapping[str, Food], wanted: str, asked: Asked) -> _Ranked:
    """Foods of the library; a title of a record is no worse than the beginning of a name."""
    found = ((fit, _food(food, asked)) for fit, food in find_in_library(foods, wanted))
    return [(False, _alike(fit), one) for fit, one in found if one is not None]


def _of_both(
    foods: Mapping[str, Food], index: sqlite3.Connection, wanted: str, asked: Asked, most: int
) -> tuple[_Ranked, int, bool]:
    """Foods and records that fit, how many there are, and whether all were looked at."""
    if is_number(wanted) and (records := called(index, wanted)):
        ranked: _Ranked = []
        hits = Records(tuple((Fit.EXACT, one) for one in records), len(records), whole=True)
    else:
        ranked = _of_library(foods, wanted, asked)
        hits = find_records(index, wanted, most, _bounds(asked))
    seen = {one.call for _, _, one in ranked}
    total = hits.total + sum(not _counted(index, foods[id_], wanted) for id_ in seen)
    known = {food.entry.fdc: food for food in foods.values()}
    for fit, found in hits.found:
        food = known.get(found.fdc)
        one = _record(found, asked) if food is None else _food(food, asked)
        if one is not None and one.call not in seen:
            ranked.append((one.package, _alike(fit), one))
    return ranked, total, hits.whole


def _bounds(asked: Asked) -> Bounds | None:
    if not asked.bounded:
        return None
    return Bounds(
        asked.measure,
        asked.at_least,
        asked.at_most,
        lambda record: _record(record, asked) is not None,
    )


def _counted(index: sqlite3.Connection, food: Food, wanted: str) -> bool:
    """Whether a food of the library is among the records that were counted."""
    return title_fits(food, wanted) and record(index, food.entry.fdc) is not None


def _alike(fit: Fit) -> Fit:
    return Fit.BEGINNINGS if fit is Fit.RECORD else fit


def _food(food: Food, asked: Asked) -> FoundFood | None:
    per_100 = {measure: food.value(measure) for measure in Measure}
    portions = (
        _Portion(one.name(FALLBACK).words, Fraction(one.grams), per_100)
        for one in food.entry.portions
    )
    name, one = food.name(FALLBACK).words, _wanted(portions, asked)
    return (
        None
        if one is None
        else FoundFood(
            food.id,
            name,
            one.amount,
            _values(one, asked),
            food.release,
            in_library=True,
            package=False,
            raw=food.entry.raw,
        )
    )


def _record(held: FoodRecord, asked: Asked) -> FoundFood | None:
    per_100 = {measure: held.per_100g[measure.value] for measure in Measure}
    label = held.label
    if label is not None and label.size:
        amount = f"{label.wording} ({label.size.normalize():f} {label.unit})"
        portions = [_Portion(amount, Fraction(label.size), per_100)]
    elif label is not None:
        portions = [_Portion(f"100 {label.unit}", Fraction(100), per_100)]
    else:
        portions = [
            _Portion(said, Fraction(one.grams), per_100) for said, one in usable_portions(held)
        ]
    one = _wanted(portions, asked)
    return (
        None
        if one is None
        else FoundFood(
            str(held.fdc),
            held.description,
            one.amount,
            _values(one, asked),
            held.release,
            in_library=False,
            package=label is not None,
        )
    )


def _wanted(portions: Iterable[_Portion], asked: Asked) -> _Portion | None:
    """The first portion that holds what is asked for."""
    return next((one for one in portions if asked.takes(one.value(asked.measure))), None)


def _values(portion: _Portion, asked: Asked) -> tuple[Decimal | None, ...]:
    return tuple(portion.value(measure) for measure in asked.measures)
