"""The cues of a caption file, each with the stop that is on when it begins."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from generator.compute.timeline import on_air, spans
from generator.model.captions import Cue
from generator.model.stops import Stop


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


def cues_on_air(stops: Sequence[Stop], cues: Sequence[Cue]) -> tuple[OnAir, ...]:
    """The stops that have a time, with their cues."""
    found = spans(stops)
    owners = [on_air(found, cue.start_ms) for cue in cues] if found else []
    return tuple(
        OnAir(
            span.index,
            span.start,
            span.end,
            tuple(cue for cue, owner in zip(cues, owners, strict=True) if owner is span),
        )
        for span in found
    )
