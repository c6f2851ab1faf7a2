"""What a lesson file plainly says of itself, read without the program that makes its pages."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import yaml

FACTS = frozenset(
    {"moves", "day", "what-if", "cooking", "foods", "choking", "allergens", "no-allergens"}
)
"""What may be plain of a lesson, beside the measures that it compares."""


@dataclass(frozen=True, slots=True)
class LessonFacts:
    """Of one lesson."""

    name: str
    """Its folder."""
    facts: frozenset[str]
    """Those of ``FACTS`` that hold, and each measure."""
    choking: tuple[str, ...]
    """Ids of its foods that can choke a small child."""
    allergens: tuple[str, ...]
    """Of all its foods together."""
    foods: tuple[str, ...]
    """Ids of all its foods."""


@cache
def lesson_facts(project: Path) -> tuple[LessonFacts, ...]:
    """Every lesson of a site, by the names of their folders."""
    foods = food_entries(project)
    files = sorted((project / "lessons").glob("*/lesson.yaml"))
    return tuple(_facts(file, foods) for file in files)


@cache
def food_entries(project: Path) -> Mapping[str, dict[str, object]]:
    """The library's entries, by id."""
    text = (project / "site_data/foods.yaml").read_text("utf-8")
    found = yaml.load(text, Loader=yaml.CSafeLoader)["foods"]
    assert isinstance(found, dict)
    return found


def _facts(file: Path, foods: Mapping[str, Mapping[str, object]]) -> LessonFacts:
    written = yaml.load(file.read_text("utf-8"), Loader=yaml.CSafeLoader)
    named = tuple(dict.fromkeys(_named("food", written)))
    entries = {name: foods[name] for name in named}
    choking = tuple(name for name, entry in entries.items() if entry.get("choking") is True)
    allergens = tuple(sorted({one for entry in entries.values() for one in _list(entry)}))
    kinds = {key for stop in written["stops"] for key in stop}
    known = {
        "moves": "move" in kinds,
        "day": "day" in kinds,
        "what-if": "what_if" in kinds,
        "cooking": written.get("cooking") is True,
        "foods": bool(named),
        "choking": bool(choking),
        "allergens": bool(allergens),
        "no-allergens": bool(named) and not allergens,
    }
    assert set(known) == FACTS
    facts = {fact for fact, holds in known.items() if holds} | set(_named("measure", written))
    return LessonFacts(file.parent.name, frozenset(facts), choking, allergens, named)


def _list(entry: Mapping[str, object]) -> list[str]:
    found = entry.get("allergens")
    return [str(one) for one in found] if isinstance(found, list) else []


def _named(key: str, value: object) -> Iterator[str]:
    """Every value of a key, at any depth."""
    if isinstance(value, dict):
        if isinstance(value.get(key), str):
            yield value[key]
        for inner in value.values():
            yield from _named(key, inner)
    elif isinstance(value, list):
        for inner in value:
            yield from _named(key, inner)
