"""Which numbers of a film are no longer the lesson's."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.compute.result import LessonResult
from generator.compute.trace import trace
from generator.model.recorded import FilmedFigure


@dataclass(frozen=True, slots=True)
class ChangedFigure:
    """A number that was filmed as one value and is another now."""

    filmed: FilmedFigure
    now: Decimal | None
    """In ``filmed.unit``; nothing where the lesson has no such number any more."""
    number: int
    """Which entry of the record it is, from 0."""


def changed_figures(result: LessonResult) -> tuple[ChangedFigure, ...]:
    """The numbers to be said anew, in the order of the video; none while nothing was recorded."""
    recorded = result.lesson.recorded
    if recorded is None:
        return ()
    now = {(figure.id, figure.unit): figure.value for figure in trace(result)}
    return tuple(
        ChangedFigure(filmed, now.get((filmed.id, filmed.unit)), number)
        for number, filmed in enumerate(recorded.file.figures)
        if now.get((filmed.id, filmed.unit)) != filmed.value
    )


def values_as_filmed(result: LessonResult) -> dict[str, frozenset[Decimal]]:
    """By stop: values that a film has and the lesson no longer; its captions say them rightly."""
    found: dict[str, frozenset[Decimal]] = {}
    for changed in changed_figures(result):
        stop = changed.filmed.stop
        found[stop] = found.get(stop, frozenset()) | {changed.filmed.value}
    return found
