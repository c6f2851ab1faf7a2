"""Whether the times of a lesson run forward, and inside its video."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import Decimal

from generator.model.moment import clock
from generator.model.places import Path, Places
from generator.model.stops import Stop
from generator.problems import Problem


def timeline_problems(
    stops: Mapping[int, Stop], places: Places, duration: float | None
) -> Iterator[Problem]:
    """Times that run backwards or lie beyond the end of the video (``duration`` in seconds)."""
    latest = Decimal(0)
    for index, stop in sorted(stops.items()):
        base: Path = ("stops", index, stop.kind)
        if stop.at is not None and stop.until is not None and stop.until <= stop.at:
            first, last = stop.times
            what = f"watching ends at {clock(stop.until)}, before it begins"
            yield Problem(places.at(*base, last), what, f"swap `{first}` and `{last}`")
        for key, time in stop.times.items():
            place = places.at(*base, key)
            if duration is not None and time > Decimal(str(duration)) + Decimal("0.5"):
                length = clock(Decimal(str(duration)))
                yield Problem(
                    place,
                    f"{clock(time)} is beyond the end of the video, which lasts {length}",
                    "give an earlier time",
                )
        if stop.at is None:
            continue
        if stop.at < latest:
            key = next(iter(stop.times))
            hint = "put the stops in the order of their times"
            yield Problem(
                places.at(*base, key),
                f"{clock(stop.at)} comes before the stop above it, at {clock(latest)}",
                hint,
            )
        latest = max(latest, stop.at)
