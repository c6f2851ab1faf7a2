"""Which food or move somebody meant who wrote its name, or half its id."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from difflib import get_close_matches

from generator.model.food import Food
from generator.model.move import Move


def foods_like(word: str, foods: Mapping[str, Food]) -> str:
    """A hint with up to three foods whose names in any language hold the words, or the nearest one."""
    from generator.read.fooddata.search import nearest_in_library  # noqa: PLC0415  # loads a database, and only a mistake needs it

    foods = {id_: food for id_, food in foods.items() if not food.entry.raw}
    names = ((name, id_) for id_, food in foods.items() for name in food.entry.names.values())
    found = [food.id for food in nearest_in_library(foods, word, 3)] or _near(word, foods, names)
    if found:
        return f"did you mean {either(found)}?"
    return "use an id that is there; look for one with: python3 generator foods find WORD"


def moves_like(word: str, moves: Mapping[str, Move]) -> str:
    """A hint with the move whose id or name, in any language, is nearest."""
    names = ((text.name, id_) for id_, move in moves.items() for text in move.texts.values())
    found = _near(word, moves, names)
    if found:
        return f"did you mean {either(found)}?"
    return f"use an id that is there, such as {either(sorted(moves)[:3])}"


def either(names: list[str]) -> str:
    """Names marked as what to write: ```a`, `b` or `c```."""
    *others, last = (f"`{name}`" for name in names)
    return f"{', '.join(others)} or {last}" if others else last


_NEAR = 0.75
"""How much of two words must be alike, by difflib's ratio, for one to be meant by the other."""


def _near(word: str, ids: Mapping[str, object], names: Iterator[tuple[str, str]]) -> list[str]:
    """The id that is spelled most like a word, or whose name is; nothing where none is near."""
    known = {name.lower(): id_ for name, id_ in names} | {id_: id_ for id_ in ids}
    return [known[near] for near in get_close_matches(word.lower(), list(known), n=1, cutoff=_NEAR)]
