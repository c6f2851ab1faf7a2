"""What every stop's view begins with, and what a stop needs to be put into a view."""

from __future__ import annotations

from dataclasses import dataclass

from generator.compute.result import LessonResult
from generator.model.stops import Stop
from generator.present.views.stop import Head
from generator.present.words.number import moment
from generator.present.words.say import Say


@dataclass(frozen=True, slots=True)
class Telling:
    """Everything a stop is told from."""

    result: LessonResult
    say: Say
    to_root: str
    """Relative address of the site's root from the lesson page: ``../``."""


def head(index: int, stop: Stop, telling: Telling) -> Head:
    """The common fields of the stop at an index."""
    return Head(
        kind=stop.kind,
        id=telling.result.lesson.stop_id(index),
        heading=stop.title or telling.say(f"stop_{stop.kind}"),
        at=None if stop.at is None else moment(stop.at),
    )
