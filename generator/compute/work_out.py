"""A lesson and the library into every number its pages show."""

from __future__ import annotations

from generator.compute.ledger import ledger
from generator.compute.result import LessonResult
from generator.compute.stops.compare import compare
from generator.compute.stops.day import day
from generator.compute.stops.move import move
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop


def work_out(lesson: Lesson, library: Library) -> LessonResult:
    """Compute a lesson whose names were all found when it was read."""
    named = tuple(zip(lesson.file.stops, lesson.ids, strict=True))
    per = {stop.compare: stop.one_move_per for stop, _ in named if isinstance(stop, MoveStop)}
    comparisons = {
        ids.stop: compare(stop, ids, per.get(ids.stop), library)
        for stop, ids in named
        if isinstance(stop, CompareStop)
    }
    movements = {
        ids.stop: move(stop, comparisons[stop.compare], lesson.file.grades, library)
        for stop, ids in named
        if isinstance(stop, MoveStop)
    }
    days = {ids.stop: day(stop, ids, library) for stop, ids in named if isinstance(stop, DayStop)}
    figures = ledger(lesson, comparisons, movements, days)
    return LessonResult(lesson, comparisons, movements, days, figures)
