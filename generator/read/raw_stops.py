"""The stops of a lesson file in one shape: what is written beside a kind belongs inside it."""

from __future__ import annotations

from dataclasses import dataclass
from difflib import get_close_matches

from generator.model.places import Path, Places
from generator.model.stops import STOP_KINDS
from generator.problems import Problem
from generator.read.explain import did_you_mean
from generator.read.source import Data

_MOST = 100
"""Stops of a lesson; the longest of the demo has seven."""
_BEGIN = "begin each stop with `- watch:`, `- ask:` …"


@dataclass(frozen=True, slots=True)
class RawStop:
    """One stop, its kind known and its keys together, not yet checked."""

    kind: str
    """Key of ``STOP_KINDS``."""
    data: dict[str, Data]
    """All its keys, those beside the kind included."""


def raw_stops(stops: Data, places: Places, problems: list[Problem]) -> dict[int, RawStop]:
    """The stops that have a kind, by their number; what is wrong with the others is added."""
    if stops is None and ("stops",) not in places.keys:
        if get_close_matches("stops", [str(path[0]) for path in places.keys if len(path) == 1]):
            return {}  # misspelled, and told as such with the other keys of the lesson
        problems.append(Problem(places.at(), "`stops:` is missing", f"add `stops:` and {_BEGIN}"))
        return {}
    if not isinstance(stops, list) or not stops:
        problems.append(Problem(places.key("stops"), "`stops` must be a list", _BEGIN))
        return {}
    if len(stops) > _MOST:
        what = f"there are {len(stops)} stops, and a lesson holds at most {_MOST}"
        problems.append(Problem(places.at("stops", _MOST), what, "make two lessons of it"))
    found: dict[int, RawStop] = {}
    for index, data in enumerate(stops[:_MOST]):
        stop = _raw(data, places, ("stops", index))
        if isinstance(stop, Problem):
            problems.append(stop)
        else:
            found[index] = stop
    return found


def places_inside(places: Places, stops: dict[int, RawStop]) -> Places:
    """The same places, where everything written beside a kind is found inside it as well.

    So is what is inside of an entry that is written as a list alone: under the key it then belongs to.
    """
    values, keys, cut = dict(places.values), dict(places.keys), dict(places.cut)
    for old, new in ((places.values, values), (places.keys, keys), (places.cut, cut)):
        for path, place in old.items():
            if len(path) > 2 and path[0] == "stops" and isinstance(path[1], int):
                stop = stops.get(path[1])
                beside = stop is not None and path[2] != stop.kind
                inside = (*path[:2], stop.kind, *path[2:]) if stop and beside else path
                if beside:
                    new[inside] = place
                alone = STOP_KINDS[stop.kind].entries_alone if stop else {}
                inner = alone.get(str(inside[3])) if len(inside) > 5 else None
                if inner and isinstance(inside[5], int):
                    new[(*inside[:5], inner, *inside[5:])] = place
    return Places(places.file, values, keys, places.lines, cut)


def _raw(data: Data, places: Places, base: Path) -> RawStop | Problem:
    if data is None:
        return Problem(places.at(*base), "there is nothing in this stop", _BEGIN)
    if not isinstance(data, dict):
        what = "a stop must begin with its kind and a colon"
        return Problem(places.at(*base), what, _BEGIN)
    kinds = [key for key in data if key in STOP_KINDS]
    if not kinds:
        word = next(iter(data), "")
        hint = did_you_mean(word, list(STOP_KINDS))
        return Problem(places.at(*base), f"`{word}` begins no kind of stop", hint)
    if len(kinds) > 1:
        what = f"one stop cannot be both `{kinds[0]}` and `{kinds[1]}`"
        return Problem(places.key(*base, kinds[1]), what, "put `- ` before the second")
    return _joined(data, kinds[0], places, base)


def _joined(data: dict[str, Data], kind: str, places: Places, base: Path) -> RawStop | Problem:
    """A stop's inner and outer keys together."""
    inner = {} if data[kind] is None and len(data) > 1 else data[kind]
    if not isinstance(inner, dict):
        hint = "indent what belongs to it by two more spaces"
        return Problem(places.at(*base, kind), f"`{kind}:` holds no keys", hint)
    beside = {key: value for key, value in data.items() if key != kind}
    for key in beside:
        if key in inner:
            what = f"`{key}` is written beside `{kind}:` and inside it"
            return Problem(places.key(*base, key), what, "keep one")
    together = {**inner, **beside}
    for key, inner in STOP_KINDS[kind].entries_alone.items():
        if key in together:
            together[key] = _written_out(together[key], inner)
    return RawStop(kind, together)


def _written_out(entries: Data, key: str) -> Data:
    """A list whose entries all have keys: one that is a list alone is that of ``key``."""
    if not isinstance(entries, list):
        return entries
    return [{key: entry} if isinstance(entry, list) else entry for entry in entries]
