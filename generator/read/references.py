"""Whether everything a lesson names exists: foods, portions, values, moves, other stops."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from generator.model.ids import PAGE_IDS
from generator.model.library import Library
from generator.model.places import Places
from generator.problems import MOST_A_FILE, Problem
from generator.read.as_written import word
from generator.read.meant import foods_like
from generator.read.raw_stops import RawStop
from generator.read.stops.items import UnknownFood
from generator.read.stops.kind import WrittenStop
from generator.read.stops.kinds import KINDS


def reference_problems(
    stops: Mapping[int, RawStop], places: Places, library: Library
) -> list[Problem]:
    """Every name in the stops that leads nowhere, looked up in the plain data."""
    found = [*_repeated_ids(stops, places)]
    for index, stop in stops.items():
        if kind := KINDS.get(stop.kind):
            path = ("stops", index, stop.kind)
            found += kind.references(WrittenStop(stop.data, path, places, library, stops))
    return list(_with_hints(found, library))


def _with_hints(found: Iterable[Problem], library: Library) -> Iterator[Problem]:
    """The problems with what was meant by each unknown food, as long as anybody reads them."""
    for number, problem in enumerate(found):
        if isinstance(problem, UnknownFood):
            hint = foods_like(problem.food, library.foods) if number < MOST_A_FILE else ""
            yield Problem(problem.place, problem.what, hint)
        else:
            yield problem


def _repeated_ids(stops: Mapping[int, RawStop], places: Places) -> Iterator[Problem]:
    """Ids given twice, or one of the page's own."""
    lines: dict[str, int] = {}
    for index, stop in stops.items():
        name = word(stop.data, "id")
        if name is None:
            continue
        place = places.at("stops", index, stop.kind, "id")
        if name in PAGE_IDS:
            yield Problem(place, f"the page uses the id `{name}` itself", "choose another id")
        elif name in lines:
            what = f"the id `{name}` is taken by the stop on line {lines[name]}"
            yield Problem(place, what, "choose another id")
        lines.setdefault(name, place.line)
