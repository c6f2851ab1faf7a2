"""Whether each comparison is counted in one step only, so that it has one count everywhere."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from generator.model.places import Places
from generator.model.stops import Stop
from generator.model.stops.move import MoveStop
from generator.problems import Problem


def counting_problems(stops: Mapping[int, Stop], places: Places) -> Iterator[Problem]:
    """Move stops that count the gaps of one comparison in different steps."""
    first: dict[str, tuple[int, MoveStop]] = {}
    for index, stop in sorted(stops.items()):
        if not isinstance(stop, MoveStop):
            continue
        at, other = first.setdefault(stop.compare, (index, stop))
        if stop.one_move_per != other.one_move_per:
            line = places.at("stops", at, other.kind, "one_move_per").line
            what = f"`{stop.compare}` is counted in steps of {other.one_move_per} on line {line}, and of {stop.one_move_per} here"
            hint = "give both the same `one_move_per`, or compare the foods in two stops, each with an id of its own"
            place = places.at("stops", index, stop.kind, "one_move_per")
            yield Problem(place, what, hint)
