"""A file of a site's own library laid over the program's: entries by their id, texts by their key."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import NamedTuple

from generator import carried
from generator.model.places import Path as DataPath
from generator.model.wording import FALLBACK
from generator.problems import Problem
from generator.read.explain import did_you_mean
from generator.read.files import LARGEST_TEXT, read_text
from generator.read.source import Data, Source, read_source

WHOLE = "whole"
"""The key of a library that stands for itself: nothing is laid below it."""
_RECORD = "fdc"
"""An entry that names its record is whole; one that does not adds to the program's entry."""
_INSIDE = ("names", "texts")
"""Keys by language, of which an entry may bring some."""
UNITS = "units"
"""Key of the words' table of household units, to which a site may add its own."""


def lies_over(root: Path, path: str) -> bool:
    """Whether the program has a file of this name that the site's own lies over."""
    return not carried.is_home(root) and Path(carried.HOME, path).is_file()


def read_over(
    root: Path, path: str, key: str, problems: list[Problem], largest: int = LARGEST_TEXT
) -> Source | None:
    """A file of the library with what is below it; nothing where it cannot be had, which is told.

    Args:
        root: folder of the site.
        path: of the file below it; it may be missing where the program has one.
        key: below which its entries stand, or nothing where the file holds texts by their keys.
        problems: what is wrong with the site's own file is added.
        largest: bytes the site's own file may have.
    """
    over = lies_over(root, path)
    if over and not (root / path).exists():
        return _carried(path)
    text = read_text(root, path, largest)
    if isinstance(text, Problem):
        problems.append(text)
        return None
    read = read_source(path, text)
    own = _unmarked(read)
    problems += own.problems
    if own is not read or not over:
        return own
    below = _carried(path)
    if key or path.endswith(f"/{FALLBACK}.yaml"):  # another language is held against English
        problems += _unknown(own, below, key)
    return laid_over(own, below, key)


def _unknown(own: Source, below: Source, key: str) -> Iterator[Problem]:
    """Keys of the site's own file that the program's has not, at the top, where nobody reads them."""
    if isinstance(own.data, dict) and isinstance(below.data, dict):
        for name in own.data.keys() - below.data.keys():
            what = f"`{name}` is no {'key of this file' if key else 'text of the site'}"
            yield Problem(own.places.key(name), what, did_you_mean(name, list(below.data)))


def _carried(path: str) -> Source:
    text = read_text(Path(carried.HOME), path)
    assert isinstance(text, str)  # noqa: S101  # what the package carries is tested with it
    return _unmarked(read_source(carried.place(path), text))


def _unmarked(source: Source) -> Source:
    """A library that stands for itself, without the mark that says so; any other file as it is."""
    if not isinstance(source.data, dict) or source.data.get(WHOLE) is not True:
        return source
    return replace(source, data={key: value for key, value in source.data.items() if key != WHOLE})


def laid_over(own: Source, below: Source, key: str) -> Source:
    """Both in one: what is in both is the site's own, noted at ``("replaced", …)`` among the keys."""
    if not isinstance(own.data, dict) or not isinstance(below.data, dict):
        return own
    if not key:
        return _merged(own, below, ())
    mine, theirs = own.data.get(key), below.data.get(key)
    result = _merged(own, below, (), leave=key)
    if not isinstance(theirs, dict) or not isinstance(result.data, dict):
        return result
    if not isinstance(mine, dict):
        result.values[key,] = own.places.at(key)
        result.data[key] = None  # told by whoever asks for the entries
        return result
    held: dict[str, Data] = dict(theirs)
    layers = _Layers(own, below, result)
    release = _release(own.data, below.data, result.data)
    for name, entry in mine.items():
        held[name] = layers.entry((key, name), entry, theirs.get(name))
        if release and isinstance(entry, dict) and _RECORD in entry:
            held[name] = {"release": release, **_dict(held[name])}
    result.data[key] = held
    return result


def _release(own: dict[str, Data], below: dict[str, Data], result: dict[str, Data]) -> str:
    """What the site's own file says its records are from; the program's are from where they were."""
    if "source" not in own or "source" not in below:
        return ""
    result["source"] = below["source"]
    said = _dict(own["source"])
    return f"{said.get('name')}, {said.get('release')}" if said else ""


def _merged(own: Source, below: Source, path: DataPath, leave: str = "") -> Source:
    """The keys of both, the own ones first; of the one left, only the places."""
    assert isinstance(own.data, dict)  # noqa: S101  # whoever calls has seen to that
    assert isinstance(below.data, dict)  # noqa: S101  # as above
    keys = {**below.keys, **own.keys}
    for name in own.data:
        if name in below.data and name != leave and own.data[name] != below.data[name]:
            keys["replaced", name] = own.keys[(*path, name)]
    data = {**below.data, **own.data}
    if isinstance(own.data.get(UNITS), dict):
        data[UNITS] = {**_dict(below.data.get(UNITS)), **_dict(own.data[UNITS])}
        keys.pop(("replaced", UNITS), None)
    return Source(own.path, own.text, data, {**below.values, **own.values}, keys)


class _Layers(NamedTuple):
    """A site's own file, the program's below it, and what both make together."""

    own: Source
    below: Source
    result: Source

    def entry(self, path: DataPath, mine: Data, theirs: Data) -> Data:
        """One entry: the own one, or the program's with what the own one changes."""
        if not isinstance(mine, dict) or not isinstance(theirs, dict):
            return mine
        if mine != theirs:
            self.result.keys["replaced", *path] = self.own.keys[path]
        if _RECORD in mine:
            _forget(self.result, self.own, path)
            return mine
        held = {**theirs, **mine}
        for name in _INSIDE:
            if isinstance(mine.get(name), dict) and isinstance(theirs.get(name), dict):
                held[name] = {**_dict(theirs[name]), **_dict(mine[name])}
        ours, given = mine.get("portions"), theirs.get("portions")
        if isinstance(ours, list) and isinstance(given, list):
            held["portions"] = list(self.portions((*path, "portions"), ours, given))
        return held

    def portions(self, at: DataPath, mine: list[Data], theirs: list[Data]) -> Iterator[Data]:
        """The program's portions, an own one of the same English name over each; then those it lacks."""
        rest = dict(enumerate(mine))
        for number, portion in enumerate(theirs):
            same = next(
                (n for n, held in rest.items() if _english(held) == _english(portion)), None
            )
            _take_places(self.result, self.below, (*at, number), (*at, number))
            if same is None:
                yield portion
                continue
            _take_places(self.result, self.own, (*at, same), (*at, number))
            over = _dict(rest.pop(same))
            names = {**_dict(_dict(portion).get("names")), **_dict(over.get("names"))}
            yield {**_dict(portion), **over, "names": dict[str, Data](names)}
        for number, (same, portion) in enumerate(rest.items(), len(theirs)):
            _take_places(self.result, self.own, (*at, same), (*at, number))
            yield portion


def _take_places(result: Source, source: Source, old: DataPath, new: DataPath) -> None:
    """Let a part of an entry stand in the places it has in a file."""
    for held, where in ((source.values, result.values), (source.keys, result.keys)):
        for path, at in held.items():
            if path[: len(old)] == old:
                where[(*new, *path[len(old) :])] = at


def _forget(result: Source, own: Source, path: DataPath) -> None:
    """Take away where the parts of the program's entry stood."""
    for held, mine in ((result.values, own.values), (result.keys, own.keys)):
        for one in [one for one in held if one[: len(path)] == path and one not in mine]:
            del held[one]


def _english(portion: Data) -> Data:
    return _dict(_dict(portion).get("names")).get("en")


def _dict(data: Data) -> dict[str, Data]:
    return data if isinstance(data, dict) else {}
