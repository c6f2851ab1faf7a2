"""When each stop of a lesson is on: one timeline for player, chapters, slides, captions and their checks.

What is said at a stop leads up to its pause point. A watch stop is on from its own beginning;
any other stop from where the one before it ended, and nothing begins right after a halt.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from generator.model.stops import Stop

HOLD = 1_000
"""ms for which nothing new begins after a pause point, so that a late halt shows and says nothing of what follows."""


@dataclass(frozen=True, slots=True)
class Span:
    """The part of the video that leads through one stop."""

    index: int
    """Which stop of the lesson, from 0."""
    start: int
    """ms"""
    end: int
    """ms; the pause point, where the stop has one."""
    pauses: bool
    """Whether the player halts at the end; a watch stop is watched through."""


def spans(stops: Sequence[Stop]) -> tuple[Span, ...]:
    """The stops that have a time, along the video."""
    found: list[Span] = []
    free = 0
    for index, stop in enumerate(stops):
        if stop.at is None:
            continue
        if stop.until is not None:
            start, end = max(free, _ms(stop.at)), max(free, _ms(stop.until))
            found.append(Span(index, start, end, pauses=False))
            free = end
        else:
            end = _ms(stop.at)
            found.append(Span(index, min(free, end), end, pauses=True))
            free = end + HOLD
    return tuple(found)


def parts(stops: Sequence[Stop]) -> tuple[Span, ...]:
    """The spans that take time: the chapters of the video.

    A stop that shares its moment with the one above takes none.
    """
    return tuple(span for span in spans(stops) if span.start < span.end)


def pause_points(stops: Sequence[Stop]) -> tuple[Span, ...]:
    """The spans at whose end the player halts, in the order of the video."""
    return tuple(sorted((span for span in spans(stops) if span.pauses), key=lambda span: span.end))


def next_pause(stops: Sequence[Stop], moment: int) -> int | None:
    """The first pause point after a moment of the video, both in ms; nothing where it runs to its end."""
    return next((span.end for span in pause_points(stops) if span.end > moment), None)


def on_air(found: Sequence[Span], moment: int) -> Span:
    """The stop that what begins at a moment belongs to.

    The first one gets what comes before it, the last one what comes after it.

    Args:
        found: some spans of a lesson in the order of the video, at least one.
        moment: ms.
    """
    return next((span for span in found if moment < span.end), found[-1])


def seconds(milliseconds: int) -> Decimal:
    """Seconds of the video, exact, as a lesson file writes its times."""
    return Decimal(milliseconds) / 1000


def _ms(time: Decimal) -> int:
    return int(time * 1000)
