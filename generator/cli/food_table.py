"""Foods that were found as lines of a given width: a table, or where that would break words, a list.

What is copied or read as a figure, an id and a value, is never broken; a name and a portion may go
on in the next line.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import zip_longest
from textwrap import wrap

from generator.author.food_search import Column, FoundFood

_CALL, _NAME, _PORTION = "id or number", "food", "portion"
_NARROWEST = 14
"""Letters a name needs at least, so that most of its words stay whole."""
_PORTIONS = (8, 24)
"""Letters a portion needs, and the most it is given."""
_GAP = "  "


def table(foods: Sequence[FoundFood], columns: Sequence[Column], width: int) -> Iterator[str]:
    """The lines of a table, its head first; of a list where the table has no room.

    Args:
        foods: at least one.
        columns: what is shown of each.
        width: signs in a line.
    """
    titles = [f"{one.name}, {one.unit}" if at else one.unit for at, one in enumerate(columns)]
    values = [[_said(value) for value in food.values] for food in foods]
    call = max(len(_CALL), *(len(food.call) for food in foods))
    sizes = [max(map(len, each)) for each in zip(titles, *values, strict=True)]
    portion = min(_PORTIONS[1], max(len(_PORTION), *(len(food.amount) for food in foods)))
    name = max(len(_NAME), *(len(food.name) for food in foods))
    room = width - call - sum(sizes) - len(_GAP) * (2 + len(sizes))
    if room < _NARROWEST + _PORTIONS[0]:
        yield from _list(foods, columns, width)
        return
    portion = min(portion, max(_PORTIONS[0], room - min(name, 2 * room // 3)))
    shape = (call, min(name, room - portion), portion, sizes)
    yield from _row(_CALL, _NAME, _PORTION, titles, shape)
    for food, said in zip(foods, values, strict=True):
        yield from _row(food.call, food.name, food.amount, said, shape)


_Shape = tuple[int, int, int, list[int]]
"""Widths of call, name, portion and values."""


def _row(call: str, name: str, portion: str, values: list[str], shape: _Shape) -> Iterator[str]:
    of_call, of_name, of_portion, sizes = shape
    said = _GAP.join(value.rjust(size) for value, size in zip(values, sizes, strict=True))
    lines = zip_longest(wrap(name, of_name), wrap(portion, of_portion), fillvalue="")
    for number, (one, other) in enumerate(lines):
        first = "" if number else call
        cells = (first.ljust(of_call), one.ljust(of_name), other.ljust(of_portion))
        yield _GAP.join((*cells, "" if number else said)).rstrip()


def _list(foods: Sequence[FoundFood], columns: Sequence[Column], width: int) -> Iterator[str]:
    for food in foods:
        name = f"{food.call}: {food.name}"
        yield from wrap(name, width, break_on_hyphens=False, break_long_words=False)
        held = f"{food.amount}: {', '.join(_held(food, columns))}"
        yield from wrap(held, width, initial_indent="    ", subsequent_indent="    ")


def _held(food: FoundFood, columns: Sequence[Column]) -> Iterator[str]:
    """What a portion holds, energy first: ``140 kcal``, ``480 mg sodium``."""
    for number, (column, value) in enumerate(zip(columns, food.values, strict=True)):
        unit = " for" if value is None else f" {column.unit}"
        yield f"{_said(value)}{unit} {column.name}" if number else f"{_said(value)} {column.unit}"


def _said(value: Decimal | None) -> str:
    return "no value" if value is None else f"{value.normalize():,f}"
