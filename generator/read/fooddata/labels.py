"""The labels of packages: number, serving and shelf; the brand is read over.

Source of the layout: references.md 11.1 (S). Amounts are for 100 g or 100 ml, by the unit of the
serving.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from generator.read.fooddata.gtin import code
from generator.read.fooddata.layout import LABELS, SERVING_UNITS
from generator.read.fooddata.seen import Seen
from generator.read.fooddata.table import Download, amount

_NAME = "branded_food.csv"
_UNITS = {
    "bag": "bags",
    "bar": "bars",
    "biscuit": "biscuits",
    "bottle": "bottles",
    "bowl": "bowls",
    "bun": "buns",
    "can": "cans",
    "carton": "cartons",
    "container": "containers",
    "cookie": "cookies",
    "cracker": "crackers",
    "cup": "cups",
    "egg": "eggs",
    "link": "links",
    "muffin": "muffins",
    "package": "packages",
    "packet": "packets",
    "patty": "patties",
    "piece": "pieces",
    "pouch": "pouches",
    "roll": "rolls",
    "scoop": "scoops",
    "slice": "slices",
    "stick": "sticks",
    "tbsp": "tbsp",
    "tortilla": "tortillas",
    "tsp": "tsp",
    "waffle": "waffles",
}
"""Plain household units, and how ours are written. Any other word may be a name of the brand."""
_SPELLED = {spelled: one for one, many in _UNITS.items() for spelled in (one, many)} | {
    "tablespoon": "tbsp",
    "tablespoons": "tbsp",
    "teaspoon": "tsp",
    "teaspoons": "tsp",
}
_NUMBER = re.compile(
    r"\s*(?:about\s+)?(\d{1,3}(?:\.\d{1,3})?(?:/\d{1,2}|\s\d/\d{1,2})?)\s", re.IGNORECASE
)
_LETTERS = re.compile(r"[a-z]+")

Label = tuple[int, str, str, str, str, str]
"""Food, code, shelf, serving, size and its unit."""


def labels(download: Download, seen: Seen) -> Iterator[Label]:
    """The label of every package whose serving is in grams or millilitres."""
    if _NAME not in download.members:
        return
    for line, row in download.rows(_NAME, LABELS[_NAME]):
        fdc, gtin, size, unit, household, shelf = row
        kind = seen.kind(fdc)
        if kind is None:
            if not seen.knows(fdc):
                download.whole(fdc, _NAME, line, "fdc_id")
            continue
        base, serving = SERVING_UNITS.get(unit.strip().lower(), ""), amount(size.strip())
        if base and serving not in {"", "0"}:
            yield int(fdc), code(gtin), shelf, plain_serving(household), serving, base
        elif base:
            yield int(fdc), code(gtin), shelf, "", "", base


@lru_cache(maxsize=4_096)
def plain_serving(household: str) -> str:
    """A serving by a plain household unit; any word that may be a name becomes ``1 serving``."""
    number = _NUMBER.match(f"{household} ")
    unit = next(
        (_SPELLED[one] for one in _LETTERS.findall(household.lower()) if one in _SPELLED), ""
    )
    if not number or not unit or not number[1].strip("0./ "):
        return "1 serving"
    return f"{number[1]} {unit if _is_one(number[1]) else _UNITS[unit]}"


def _is_one(number: str) -> bool:
    return " " not in number and ("/" in number or float(number) <= 1)
