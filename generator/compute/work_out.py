"""A lesson and the library into every number its pages show."""

from __future__ import annotations

from generator.compute.result import LessonResult
from generator.compute.stops.compare import comparison
from generator.compute.stops.day import day
from generator.compute.stops.move import movement
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop


def work_out(lesson: Lesson, library: Library) -> LessonResult:
    """Compute a lesson whose names were all found when it was read."""
    stops = lesson.file.stops
    per = {stop.compare: stop.one_move_per for stop in stops if isinstance(stop, MoveStop)}
    comparisons = {
        stop.id: comparison(stop, ids.parts, per.get(stop.id), library)
        for stop, ids in zip(stops, lesson.ids, strict=True)
        if isinstance(stop, CompareStop)
    }
    movements = {
        lesson.stop_id(index): movement(stop, comparisons[stop.compare], library)
        for index, stop in enumerate(stops)
        if isinstance(stop, MoveStop)
    }
    days = {
        lesson.stop_id(index): day(stop, library)
        for index, stop in enumerate(stops)
        if isinstance(stop, DayStop)
    }
    return LessonResult(lesson, comparisons, movements, days)
