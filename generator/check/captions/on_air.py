"""Which stop is being spoken about at a moment of the video."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from generator.model.captions import Cue
from generator.model.stops import Stop
from generator.model.stops.watch import WatchStop


@dataclass(frozen=True, slots=True)
class OnAir:
    """A stop, and the part of the video that leads through it."""

    index: int
    """Which stop of the lesson, from 0."""
    start_ms: int
    """ms"""
    end_ms: int
    """ms; the pause point, or where watching ends."""
    cues: tuple[Cue, ...]
    """Those that begin in this part."""


def on_air(stops: Sequence[Stop], cues: Sequence[Cue]) -> tuple[OnAir, ...]:
    """The stops that have a time, with their cues.

    What is said at a stop leads up to its pause point. The first stop gets what comes before it,
    and the last one what comes after it.
    """
    timed = [(index, stop) for index, stop in enumerate(stops) if stop.at is not None]
    found: list[OnAir] = []
    left = list(cues)
    free = 0
    for number, (index, stop) in enumerate(timed):
        end = int((stop.end if isinstance(stop, WatchStop) else stop.at or 0) * 1000)
        last = number == len(timed) - 1
        mine = [cue for cue in left if last or cue.start_ms < end]
        start = max(free, int((stop.at or 0) * 1000)) if isinstance(stop, WatchStop) else free
        found.append(OnAir(index, min(start, end), end, tuple(mine)))
        left = left[len(mine) :]
        free = max(free, end)
    return tuple(found)
