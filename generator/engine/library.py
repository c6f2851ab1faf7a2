"""The library of foods, moves and words, read once: kept in a form that loads in a moment."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field, replace

from pydantic import TypeAdapter, ValidationError

from generator.engine.contents import combined
from generator.engine.pack import DamagedPackError, Fact, checksum
from generator.engine.store import Store
from generator.engine.uses import ALL, Watched
from generator.model.library import Library
from generator.model.places import Path
from generator.problems import Place

_NAME, _PLACES = "library.json", "places.json"


@dataclass(frozen=True, slots=True)
class KnownLibrary:
    """A library, and what tells its entries from others of the same name."""

    library: Library
    sums: Mapping[str, str] = field(repr=False)
    """A checksum for every entry by its name, ``foods/apple-raw``, and for all: ``foods/*``; for the
    names of foods by language: ``names/en``."""

    def watched(self) -> tuple[Library, set[str]]:
        """The library, and where it notes the names of the entries that it is asked for."""
        asked: set[str] = set()
        library = self.library
        return replace(
            library,
            foods=Watched(library.foods, "foods", asked),
            moves=Watched(library.moves, "moves", asked),
            food_names=Watched(library.food_names, "names", asked),
        ), asked

    def sums_of(self, names: list[str]) -> dict[str, str]:
        """The checksums of some entries; empty for one that is not there."""
        return {name: self.sums.get(name, "") for name in names}


def known_library(store: Store, key: str, read: Callable[[], Library]) -> KnownLibrary:
    """The library as it was kept, or read and kept.

    Raises:
        LessonError: as ``read``; nothing is kept then.
    """
    if kept := _kept(store, key):
        return kept
    library = read()
    known = KnownLibrary(library, dict(_sums(library)))
    facts: dict[str, Fact] = dict(known.sums)
    plain = _adapter().dump_json(replace(library, places={}), by_alias=True)
    places = _of_places().dump_json(list(library.places.items()))
    store.keep(key, facts, [(_NAME, plain), (_PLACES, places)])
    store.sweep([key], spare=2)
    return known


def _kept(store: Store, key: str) -> KnownLibrary | None:
    pack = store.find(key)
    if pack is None:
        return None
    try:
        plain, places = (content for _, content in pack.contents())
        library = _adapter().validate_json(plain)
        library = replace(library, places=dict(_of_places().validate_json(places)))
    except (DamagedPackError, ValidationError):
        return None
    return KnownLibrary(library, {name: str(held) for name, held in pack.facts.items()})


def _sums(library: Library) -> Iterator[tuple[str, str]]:
    kinds: tuple[tuple[str, Mapping[str, object]], ...] = (
        ("foods", library.foods),
        ("moves", library.moves),
        ("names", library.food_names),
    )
    for kind, entries in kinds:
        each = {
            f"{kind}/{name}": checksum(_of_any().dump_json(entry))
            for name, entry in entries.items()
        }
        yield from each.items()
        yield f"{kind}/{ALL}", combined(each)


def _adapter() -> TypeAdapter[Library]:
    return TypeAdapter(Library)


def _of_places() -> TypeAdapter[list[tuple[Path, Place]]]:
    return TypeAdapter(list[tuple[Path, Place]])


def _of_any() -> TypeAdapter[object]:
    return TypeAdapter(object)
