"""Rows of the download, checked, as rows of the index."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date

from generator.read.fooddata.archive import AGAIN
from generator.read.fooddata.layout import (
    CATEGORIES,
    COLUMNS,
    KINDS,
    NO_UNIT,
    NUTRIENTS,
    UNITS,
    preferences,
)
from generator.read.fooddata.table import Download, plain


@dataclass(slots=True)
class Seen:
    """What one file says that the next ones need."""

    lines: dict[str, int] = field(default_factory=dict, repr=False)
    """Line in ``food.csv`` of every record, samples too, by its id."""
    kinds: dict[str, str] = field(default_factory=dict, repr=False)
    """Data type of every food that is kept, by its id."""
    published: dict[str, str] = field(default_factory=dict)
    """Newest publication date of each data type that is kept."""
    others: Counter[str] = field(default_factory=Counter)
    """Records of other data types."""
    weightless: Counter[str] = field(default_factory=Counter)
    """Portions with an amount or a weight of 0, by data type."""
    unmeasured: Counter[str] = field(default_factory=Counter)
    """Portions of a quantity that is not specified, by data type."""


def foods(download: Download, seen: Seen) -> Iterator[tuple[int, str, str, str]]:
    """Id, data type, description and category of the foods that are kept."""
    name, found = "food.csv", download.found
    shelves = _categories(download)
    for line, row in download.rows(name, COLUMNS[name], ("food_category_id",)):
        text, kind, description, day, shelf = row
        fdc = download.whole(text, name, line, "fdc_id")
        if text in seen.lines:
            what = f"the food {text} is there twice; the first is on line {seen.lines[text]}"
            found.add(what, AGAIN, name, line)
        seen.lines[text] = line
        if kind not in KINDS:
            seen.others[kind] += 1
        elif not description.strip():
            found.add(f"the food {text} has no description", AGAIN, name, line)
        elif not _is_day(day):
            found.add(f"`publication_date` must be a day, not `{day[:40]}`", AGAIN, name, line)
        elif fdc is not None:
            seen.kinds[text] = kind
            seen.published[kind] = max(day, seen.published.get(kind, ""))
            yield fdc, kind, description, shelves.get(shelf, "")


def nutrients(download: Download) -> dict[str, int]:
    """Ids of the nutrients we keep, by every way ``food_nutrient.csv`` may name them.

    An FNDDS download may put the older nutrient number (208) where the id (1008) belongs; either
    is taken. The two never meet: numbers stay below 1000, ids begin there.
    """
    name, found = "nutrient.csv", download.found
    figures = {id_: what[0] for kind in KINDS.values() for id_, what in preferences(kind).items()}
    known: dict[str, int] = {}
    for line, (text, title, unit, number) in download.rows(name, COLUMNS[name], ("nutrient_nbr",)):
        nutrient = download.whole(text, name, line, "id")
        if nutrient not in figures:
            continue
        wanted = UNITS[figures[nutrient]]
        if unit.strip().lower() != wanted:
            what = f"{title} (nutrient {nutrient}) is in `{unit}`, and we know it in {wanted} only"
            found.add(what, "a figure in another unit is never guessed: tell us", name, line)
        known[text] = nutrient
        if number:
            known.setdefault(number, nutrient)
    for figure, ids in NUTRIENTS.items():
        if not set(ids) & set(known.values()):
            listed = " or ".join(map(str, ids))
            found.add(f"the nutrient {listed} ({figure}) is missing", AGAIN, name)
    found.settle()
    return known


def values(download: Download, seen: Seen) -> Iterator[tuple[int, str, int, int, str, int]]:
    """Food, figure, rank, nutrient, amount per 100 g and line of every figure that is kept."""
    name, known = "food_nutrient.csv", nutrients(download)
    kept = {kind: preferences(KINDS[kind]) for kind in KINDS}
    kinds = seen.kinds
    for line, (fdc, text, cell) in download.rows(name, COLUMNS[name]):
        kind = kinds.get(fdc)
        if kind is None:
            if fdc not in seen.lines:
                download.whole(fdc, name, line, "fdc_id")
            continue
        nutrient = known.get(text)
        if nutrient is None:
            if not text.isdigit() and not _is_number(text):
                download.whole(text, name, line, "nutrient_id")
            continue
        if not cell:  # a blank is no value; it is not zero
            continue
        amount = download.figure(cell, name, line, "amount")
        if amount is not None:
            figure, rank = kept[kind][nutrient]
            yield int(fdc), figure, rank, nutrient, plain(amount), line


def portions(download: Download, seen: Seen) -> Iterator[tuple[int, int, str, str]]:
    """Food, place in its list, wording and grams of every portion that can be measured."""
    name, found = "food_portion.csv", download.found
    file = "measure_unit.csv"
    units = {key: title for _, (key, title) in download.rows(file, COLUMNS[file])}
    for line, row in download.rows(name, COLUMNS[name]):
        fdc, cell, unit, description, modifier, weight = row
        grams = download.figure(weight, name, line, "gram_weight")
        amount = download.figure(cell, name, line, "amount") if cell else None
        kind = seen.kinds.get(fdc)
        if fdc not in seen.lines:
            found.add(f"a portion of the food {fdc[:20]}, which is not there", AGAIN, name, line)
        elif unit and unit != NO_UNIT and unit not in units:
            found.add(f"the measure unit {unit[:20]} is not known", AGAIN, name, line)
        elif kind is None or grams is None:
            continue
        elif grams == 0 or amount == 0:
            seen.weightless[kind] += 1
        elif description.strip().lower() == "quantity not specified":
            seen.unmeasured[kind] += 1
        else:
            number = plain(amount) if amount is not None else ""
            word = "" if unit in {"", NO_UNIT} else units[unit]
            yield int(fdc), line, wording(number, word, description, modifier), plain(grams)


def wording(amount: str, unit: str, description: str, modifier: str) -> str:
    """A portion in the record's own words.

    SR Legacy writes the amount, and the unit in the modifier; Foundation the amount, a measure
    unit and a modifier; FNDDS all of it in the description, and in the modifier a code.
    """
    if description and modifier.isdigit():
        modifier = ""
    if description[:1].isdigit():
        amount = ""
    return " ".join(" ".join((amount, unit, description, modifier)).split())


def _categories(download: Download) -> dict[str, str]:
    """Titles of the shelves; a shelf helps to place a food, and a food without one is still a food."""
    return {
        key: title
        for name, columns in CATEGORIES.items()
        if name in download.members
        for _, (key, title) in download.rows(name, (), columns)
    }


def _is_day(text: str) -> bool:
    try:
        date.fromisoformat(text)
    except ValueError:
        return False
    return True


def _is_number(text: str) -> bool:
    """Whether it is an older nutrient number, some of which carry a point: ``269.3``."""
    return text.replace(".", "", 1).isdigit()
