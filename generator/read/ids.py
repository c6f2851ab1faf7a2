"""Whether the names of stops, rows and foods tell them apart, those given and those made."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from generator.model.ids import TOTAL, StopIds, stop_ids
from generator.model.places import Path, Places
from generator.model.stops import Stop
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.problems import Problem


def id_problems(stops: Mapping[int, Stop], places: Places) -> Iterator[Problem]:
    """Every name that two things of a lesson have; ids given twice to stops are told by ``references``."""
    lines = {stop.id: places.at("stops", index).line for index, stop in stops.items() if stop.id}
    for index, stop in stops.items():
        base: Path = ("stops", index, stop.kind)
        ids = stop_ids(stop)
        if not stop.id:
            if ids.stop in lines:
                what = f"this stop and the one on line {lines[ids.stop]} would both be called `{ids.stop}`"
                yield Problem(places.at("stops", index), what, "give one of them an `id:`")
            lines.setdefault(ids.stop, places.at("stops", index).line)
        if isinstance(stop, CompareStop):
            yield from _rows(stop, ids, base, places)
            yield from _sides(ids, base, places)
        if isinstance(stop, DayStop):
            yield from _foods(ids, base, places)


def _rows(stop: CompareStop, ids: StopIds, base: Path, places: Places) -> Iterator[Problem]:
    for number, (row, name) in enumerate(zip(stop.rows, ids.parts, strict=True)):
        first = ids.parts.index(name)
        if row.id == TOTAL:
            what = f"`{TOTAL}` is what all rows together are called"
            yield Problem(places.at(*base, "rows", number, "id"), what, "choose another id")
        elif first < number and row.id:
            what = f"the id `{name}` is taken by row {first + 1}"
            yield Problem(places.at(*base, "rows", number, "id"), what, "choose another id")
        elif first < number:
            what = f"rows {first + 1} and {number + 1} hold the same foods in the same amounts"
            hint = "take one out, or name it: {id: again, foods: [{food: …, amount: …}, {food: …, amount: …}]}"
            yield Problem(places.at(*base, "rows", number), what, hint)


def _sides(ids: StopIds, base: Path, places: Places) -> Iterator[Problem]:
    if len(set(ids.sides)) == 1:
        hint = "name them so that a sentence can tell them apart: sides: [At home, On the way]"
        yield Problem(places.at(*base, "sides"), "both sides have the same name", hint)


def _foods(ids: StopIds, base: Path, places: Places) -> Iterator[Problem]:
    for number, name in enumerate(ids.parts):
        if ids.parts.index(name) < number:
            what = f"foods {ids.parts.index(name) + 1} and {number + 1} of this day are the same, of the same amount and meal"
            hint = "write them once with the whole amount, such as `2 cups`, or say with `when:` at which meal each was"
            yield Problem(places.at(*base, "ate", number), what, hint)
