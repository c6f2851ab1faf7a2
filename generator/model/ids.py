"""The names of stops, rows and foods of a day, by which the rest of the program and old links find them.

A name is given by the educator or made of what stands there, never of a number in an order, so that
it stays when others are moved, added or taken out. It is made once, in the lesson's own language.
"""

from __future__ import annotations

import re
import unicodedata
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from hashlib import sha256

from generator.model.stops import Stop
from generator.model.stops.compare import CompareStop, Item, RowEntry
from generator.model.stops.day import DayStop, Eaten

# fmt: off
PAGE_IDS = frozenset({
    "adults", "b1", "b10", "b100", "bhalf", "btenth", "first", "half", "hundred",
    "main", "on-paper", "one", "second", "ten", "tens", "tenth", "who",
})
# fmt: on
"""Ids that the pages of the theme use for themselves."""

TOTAL = "total"
"""Stands for all rows together, where a row's name would stand; no row may take it."""
_KINDS = frozenset({"count", "eaten", "gap", "left-over", "needed", TOTAL})
"""What numbers of a stop are called; a side or a food of such a name gets a word more."""
_LONGEST = 24
"""Letters of a name made of words: short enough for an address that is read aloud."""


@dataclass(frozen=True, slots=True)
class StopIds:
    """The names in one stop."""

    stop: str
    """Of the stop itself: its address on the page."""
    parts: tuple[str, ...] = ()
    """Of its rows, or of the foods of a day, in their order."""
    foods: tuple[tuple[str, ...], ...] = ()
    """Of the foods of each row, in the order of the sides, or of each food of a day."""
    sides: tuple[str, ...] = ()
    """Of the two sides of a comparison."""


def lesson_ids(stops: Sequence[Stop]) -> tuple[StopIds, ...]:
    """The names in every stop; two may be equal here, which reading refuses."""
    return tuple(map(stop_ids, stops))


def stop_ids(stop: Stop) -> StopIds:
    """The names in one stop."""
    name = stop.id or _made(stop)
    if isinstance(stop, CompareStop):
        foods = tuple(tuple(map(food_id, row.foods)) for row in stop.rows)
        return StopIds(name, row_ids(stop.rows), foods, side_ids(stop.sides))
    if isinstance(stop, DayStop):
        return StopIds(name, eaten_ids(stop.ate), tuple((food_id(food),) for food in stop.ate))
    return StopIds(name)


def row_ids(rows: Sequence[RowEntry]) -> tuple[str, ...]:
    """Each row's own id, or its two foods; with their amounts where another row has the same two."""
    plain = [_joined(row, food_id) for row in rows]
    seen = Counter(plain)
    return tuple(
        row.id or (_joined(row, _food_and_amount) if seen[name] > 1 else name)
        for row, name in zip(rows, plain, strict=True)
    )


def side_ids(sides: tuple[str, str]) -> tuple[str, str]:
    """Both sides by their names, shortened where that does not make them one."""
    first, second = (_apart(slug(side)) for side in sides)
    if first == second:
        first, second = (_apart(slug(side, longest=len(side))) for side in sides)
    return first, second


def eaten_ids(foods: Sequence[Eaten]) -> tuple[str, ...]:
    """Each food of a day; with its amount where it is eaten twice, and its meal where that does not do."""
    meals: list[str] = []
    for food in foods:
        meals.append(slug(food.when) if food.when else meals[-1] if meals else "")
    ways: list[list[str]] = [
        [food_id(food) for food in foods],
        [_food_and_amount(food) for food in foods],
        [_dashed(_food_and_amount(food), meal) for food, meal in zip(foods, meals, strict=True)],
    ]
    counts = [Counter(way) for way in ways]
    return tuple(
        next(
            (way[at] for way, count in zip(ways, counts, strict=True) if count[way[at]] == 1),
            ways[-1][at],
        )
        for at in range(len(foods))
    )


def slug(text: str, longest: int = _LONGEST) -> str:
    """Small letters, digits and single hyphens, cut after a whole word where one fits.

    A text in letters that have no such spelling is named by a few signs that change when it does.
    """
    bare = unicodedata.normalize("NFKD", text.casefold())
    words = re.findall(r"[a-z0-9]+", "".join(c for c in bare if not unicodedata.combining(c)))
    name = ""
    for word in words:
        if name and len(name) + 1 + len(word) > longest:
            break
        name = _dashed(name, word[:longest])
    return name or "x" + sha256(text.encode()).hexdigest()[:6]


def _made(stop: Stop) -> str:
    """A name of a stop's own words; its kind comes first where they would make no good name."""
    name = slug(stop.called)
    return name if name[0].isalpha() and name not in PAGE_IDS else f"{stop.kind}-{name}"


def _joined(row: RowEntry, name: Callable[[Item], str]) -> str:
    """Both foods in the order of the alphabet: a row stays the same when its sides are swapped."""
    return "_".join(sorted(map(name, row.foods)))


def food_id(item: Item) -> str:
    """What a food is called in every language: its id, or a word made of its own name."""
    return item.food or _apart(slug(item.name or ""))


def _apart(name: str) -> str:
    """A name that is none of the kinds of number, beside which it stands."""
    return f"{name}-itself" if name in _KINDS else name


def _food_and_amount(item: Item) -> str:
    return _dashed(food_id(item), slug(item.amount) if item.amount else "")


def _dashed(*parts: str) -> str:
    return "-".join(part for part in parts if part)
