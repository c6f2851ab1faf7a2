"""Rows of the download, checked, as rows of the index."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from functools import lru_cache

from generator.read.fooddata.archive import AGAIN
from generator.read.fooddata.layout import (
    CATEGORIES,
    CODES,
    COLUMNS,
    FIGURE_OF,
    KINDS,
    LABELS,
    NO_UNIT,
    NUTRIENTS,
    PORTIONS,
    UNITS,
)
from generator.read.fooddata.seen import Seen
from generator.read.fooddata.table import Download, plain, whole

Shelves = Mapping[str, str]
"""Titles of the shelves by their number."""


def shelves(download: Download) -> Shelves:
    """A shelf helps to place a food; a food without one is still a food."""
    held: dict[str, str] = {}
    for name, columns in CATEGORIES.items():
        if name in download.members:
            held |= {key: title for _, (key, title) in download.rows(name, columns)}
    return held


def foods(download: Download, seen: Seen, titles: Shelves) -> Iterator[tuple[int, str, str, str]]:
    """Id, data type, description and category of the foods that are kept."""
    name, found = "food.csv", download.found
    for line, row in download.rows(name, COLUMNS[name], ("food_category_id",)):
        text, kind, description, day, shelf = row
        fdc = download.whole(text, name, line, "fdc_id")
        if fdc is None:
            continue
        if not seen.note(fdc, kind):
            what = f"the food {text} is there twice; the first is on line {_first(download, text)}"
            found.add(what, AGAIN, name, line)
        elif kind not in KINDS:
            seen.others[kind] += 1
        elif not description.strip():
            found.add(f"the food {text} has no description", AGAIN, name, line)
        elif not _is_day(day):
            found.add(f"`publication_date` must be a day, not `{day[:40]}`", AGAIN, name, line)
        else:
            seen.foods[kind] += 1
            seen.published[kind] = max(day, seen.published.get(kind, ""))
            yield fdc, kind, description, titles.get(shelf, "")
    _refuse_missing(download, seen)


def codes(download: Download, seen: Seen, titles: Shelves) -> Iterator[tuple[int, str, str]]:
    """Id, number elsewhere and category of foods without a brand."""
    for name, column in CODES.items():
        if name not in download.members:
            continue
        shelf_columns = ("wweia_category_code", "wweia_category_number")
        for _, (fdc, code, *shelf) in download.rows(name, ("fdc_id",), (column, *shelf_columns)):
            if seen.kind(fdc) and whole(code) is not None:
                yield int(fdc), code, next((titles[one] for one in shelf if one in titles), "")


def nutrients(download: Download) -> dict[str, int]:
    """Ids of the nutrients we keep, by every way ``food_nutrient.csv`` may name them.

    An FNDDS download may put the older nutrient number (208) where the id (1008) belongs; either
    is taken. The two never meet: numbers stay below 1000, ids begin there.
    """
    name, found = "nutrient.csv", download.found
    known: dict[str, int] = {}
    for line, (text, title, unit, number) in download.rows(name, COLUMNS[name], ("nutrient_nbr",)):
        nutrient = download.whole(text, name, line, "id")
        if nutrient not in FIGURE_OF:
            continue
        wanted = UNITS[FIGURE_OF[nutrient]]
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


def portions(download: Download, seen: Seen) -> Iterator[tuple[int, int, str, str]]:
    """Food, place in its list, wording and grams of every portion that can be measured."""
    name, found = "food_portion.csv", download.found
    if not set(PORTIONS) <= set(download.members):
        return
    file = "measure_unit.csv"
    units = {key: title for _, (key, title) in download.rows(file, PORTIONS[file])}
    for line, row in download.rows(name, PORTIONS[name]):
        fdc, cell, unit, description, modifier, weight = row
        grams = download.figure(weight, name, line, "gram_weight")
        amount = download.figure(cell, name, line, "amount") if cell else None
        kind = seen.kind(fdc)
        if not seen.knows(fdc):
            found.add(f"a portion of the food {fdc[:20]}, which is not there", AGAIN, name, line)
        elif unit and unit != NO_UNIT and unit not in units:
            found.add(f"the measure unit {unit[:20]} is not known", AGAIN, name, line)
        elif kind is None or grams is None:
            continue
        elif grams == 0 or amount == 0:
            seen.weightless[kind.data_type] += 1
        elif description.strip().lower() == "quantity not specified":
            seen.unmeasured[kind.data_type] += 1
        else:
            seen.portions[kind.data_type] += 1
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


def _refuse_missing(download: Download, seen: Seen) -> None:
    """Tell of files that the kinds of food in this download need: each zip holds those of its own."""
    for kind in seen.published:
        for needed in LABELS if KINDS[kind].branded else PORTIONS:
            if needed not in download.members:
                what = f"`{needed}` is missing from the zip, and it holds {KINDS[kind].title}"
                download.found.add(what, AGAIN)


def _first(download: Download, fdc: str) -> int:
    """The line a food stands on first: looked for again, as it is hardly ever asked."""
    name = "food.csv"
    return next(line for line, (text,) in download.rows(name, ("fdc_id",)) if text == fdc)


@lru_cache(maxsize=4_096)
def _is_day(text: str) -> bool:
    try:
        date.fromisoformat(text)
    except ValueError:
        return False
    return True
