"""``site_data/`` into the library: foods, moves, words and who makes the site."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Annotated

from pydantic import Field

from generator.carried import is_place
from generator.model.base import Frozen
from generator.model.food import Food, FoodEntry
from generator.model.library import Library
from generator.model.move import Move, Moves
from generator.model.places import Path as DataPath
from generator.model.places import Places
from generator.model.site import SiteFile
from generator.problems import LessonError, Place, Problem
from generator.read.explain import Model, validate
from generator.read.files import read_text
from generator.read.overlay import read_over
from generator.read.site_folder import folder_problems
from generator.read.source import Data, read_source
from generator.read.words import read_words

FOODS, MOVES, SITE = "site_data/foods.yaml", "site_data/moves.yaml", "site_data/site.yaml"


class FoodSource(Frozen):
    """Where the foods' figures come from."""

    name: str
    """As pages give it."""
    release: str
    """Year and month."""
    licence: str
    """Under which its figures are used."""
    url: Annotated[str, Field(pattern="^https://")]
    """Where it is found."""


def read_library(root: Path) -> Library:
    """Read all of ``site_data/``.

    Raises:
        LessonError: with every mistake of every file in it.
    """
    if problems := folder_problems(root):
        raise LessonError(problems)
    places: dict[DataPath, Place] = {}
    data, of_site = _data(root, SITE, problems)
    site = _kept(validate(SiteFile, data, of_site), problems) if data is not None else None
    foods = _foods(root, problems, places)
    moves = _moves(root, problems, places)
    words = read_words(root, site.languages if site else (), problems, places)
    if problems or site is None:
        raise LessonError(problems)
    places |= {("languages", at): of_site.at("languages", at) for at in range(len(site.languages))}
    places["address",] = of_site.at("address")
    places |= {("formerly", old): of_site.key("formerly", old) for old in site.formerly}
    return Library(foods, moves, words, site, places, _food_names(foods))


def _foods(root: Path, problems: list[Problem], words_at: dict[DataPath, Place]) -> dict[str, Food]:
    data, places = _over(root, FOODS, "foods", problems, words_at)
    told_at = {("names",), ("per_100g",)}
    words_at |= {path: place for path, place in places.keys.items() if path[-1:] in told_at}
    source = _part(FoodSource, data, places, "source", problems)
    release = f"{source.name}, {source.release}" if source else ""
    entries = _entries(FoodEntry, data, places, "foods", problems)
    seen: dict[int, str] = {}
    for name, entry in entries.items():
        if entry.fdc in seen:
            records = [places.at("foods", one, "fdc") for one in (name, seen[entry.fdc])]
            place = next((at for at in records if not is_place(at.path)), records[0])
            problems.append(
                Problem(
                    place,
                    f"`{name}` and `{seen[entry.fdc]}` are the same record {entry.fdc}",
                    "keep one of them",
                )
            )
        seen.setdefault(entry.fdc, name)
    return {name: Food(name, entry, entry.release or release) for name, entry in entries.items()}


def _moves(
    root: Path, problems: list[Problem], words_at: dict[DataPath, Place]
) -> Mapping[str, Move]:
    data, places = _over(root, MOVES, "moves", problems, words_at)
    words_at |= {path: place for path, place in places.keys.items() if path[2:] == ("texts",)}
    entries = _entries(Move, data, places, "moves", problems)
    if not problems and data is not None:
        _kept(validate(Moves, data, places), problems)
    return entries


def _data(root: Path, path: str, problems: list[Problem]) -> tuple[Data, Places]:
    text = read_text(root, path)
    if isinstance(text, Problem):
        problems.append(text)
        return None, Places(path, {}, {})
    source = read_source(path, text)
    problems += source.problems
    return source.data, source.places


def _over(
    root: Path, path: str, key: str, problems: list[Problem], replaced: dict[DataPath, Place]
) -> tuple[Data, Places]:
    """A file of the library laid over the program's; where the own one replaces something is noted."""
    source = read_over(root, path, key, problems)
    if source is None:
        return None, Places(path, {}, {})
    replaced |= {
        at: place for at, place in source.keys.items() if at[:1] == ("replaced",) and len(at) > 1
    }
    return source.data, source.places


def _part(
    model: type[Model], data: Data, places: Places, key: str, problems: list[Problem]
) -> Model | None:
    if data is None:
        return None
    if not isinstance(data, dict) or key not in data:
        problems.append(
            Problem(places.at(), f"`{key}:` is missing", "take it from the last commit")
        )
        return None
    return _kept(validate(model, data[key], places, (key,)), problems)


def _entries(
    model: type[Model], data: Data, places: Places, key: str, problems: list[Problem]
) -> Mapping[str, Model]:
    """The entries below a key, each a model; a wrong one leaves the others standing."""
    entries = data.get(key) if isinstance(data, dict) else None
    if not isinstance(entries, dict):
        if data is not None:
            problems.append(
                Problem(places.at(key), f"`{key}:` must hold entries", "write `id:` lines below it")
            )
        return {}
    made = {
        name: _kept(validate(model, entry, places, (key, name)), problems)
        for name, entry in entries.items()
    }
    return {name: entry for name, entry in made.items() if entry is not None}


def _kept(result: Model | list[Problem], problems: list[Problem]) -> Model | None:
    if isinstance(result, list):
        problems += result
        return None
    return result


def _food_names(foods: Mapping[str, Food]) -> Mapping[str, tuple[str, ...]]:
    """The names of all foods by language, in the order of the alphabet."""
    found: dict[str, set[str]] = {}
    for food in foods.values():
        for language, name in food.entry.names.items():
            found.setdefault(language, set()).add(name)
    return {language: tuple(sorted(names)) for language, names in found.items()}
