"""Whether the names of stops, rows and foods tell them apart, those given and those made."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from generator.model.ids import stop_ids
from generator.model.places import Places
from generator.model.stops import Stop
from generator.problems import Problem
from generator.read.stops.kind import MadeStop
from generator.read.stops.kinds import KINDS


def id_problems(stops: Mapping[int, Stop], places: Places) -> Iterator[Problem]:
    """Every name that two things of a lesson have; ids given twice to stops are told by ``references``."""
    lines = {stop.id: places.at("stops", index).line for index, stop in stops.items() if stop.id}
    for index, stop in stops.items():
        ids = stop_ids(stop)
        if not stop.id:
            if ids.stop in lines:
                what = f"this stop and the one on line {lines[ids.stop]} would both be called `{ids.stop}`"
                yield Problem(places.at("stops", index), what, "give one of them an `id:`")
            lines.setdefault(ids.stop, places.at("stops", index).line)
        if kind := KINDS.get(stop.kind):
            yield from kind.names(MadeStop(stop, ids, ("stops", index, stop.kind), places))
