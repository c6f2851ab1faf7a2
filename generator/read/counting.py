"""Whether each comparison is counted in one step only, so that it has one count everywhere."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import Decimal

from generator.model.places import Places
from generator.model.stops import Stop
from generator.problems import Problem


def counting_problems(stops: Mapping[int, Stop], places: Places) -> Iterator[Problem]:
    """Stops that count the gaps of one comparison in different steps."""
    first: dict[str, tuple[int, Decimal]] = {}
    for index, stop in sorted(stops.items()):
        if stop.counts is None:
            continue
        counted, step = stop.counts
        at, other = first.setdefault(counted, (index, step))
        if step != other:
            line = places.at("stops", at, stops[at].kind, "one_move_per").line
            what = f"`{counted}` is counted in steps of {other} on line {line}, and of {step} here"
            hint = "give both the same `one_move_per`, or compare the foods in two stops, each with an id of its own"
            place = places.at("stops", index, stop.kind, "one_move_per")
            yield Problem(place, what, hint)
