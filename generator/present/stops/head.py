"""What every stop's view begins with, and what a stop needs to be put into a view."""

from __future__ import annotations

from dataclasses import dataclass

from generator.compute.result import LessonResult
from generator.model.moment import clock
from generator.model.stops import Stop
from generator.present.words.say import Say, digits


@dataclass(frozen=True, slots=True)
class Telling:
    """Everything a stop is told from."""

    result: LessonResult
    say: Say
    to_root: str
    """Relative address of the site's root from the lesson page: ``../``."""


@dataclass(frozen=True, slots=True)
class Head:
    """The common fields of a stop's view."""

    kind: str
    id: str
    heading: str
    at: str
    at_seconds: str
    number: int


def head(index: int, stop: Stop, telling: Telling) -> Head:
    """The common fields of the stop at an index."""
    return Head(
        kind=stop.kind,
        id=telling.result.lesson.stop_id(index),
        heading=stop.title or telling.say(f"stop_{stop.kind}"),
        at="" if stop.at is None else clock(stop.at),
        at_seconds="" if stop.at is None else digits(stop.at),
        number=index + 1,
    )
