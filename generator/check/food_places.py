"""Where a lesson file says something of a food."""

from __future__ import annotations

from generator.compute.figure import Figure
from generator.compute.result import LessonResult
from generator.problems import Place


def food_place(result: LessonResult, figure: Figure, key: str) -> Place:
    """Where a key of the food is written whose number this is, such as its ``value``."""
    at = next(at for at, ids in enumerate(result.lesson.ids) if ids.stop == figure.stop)
    kind = result.lesson.file.stops[at].kind
    return result.lesson.places.at("stops", at, kind, *figure.written, key)
