"""A lesson and the library into every number its pages show."""

from __future__ import annotations

from generator.compute.answers import answer_figures, answers
from generator.compute.ledger import ledger
from generator.compute.result import Comparison, LessonResult, WorkedStop
from generator.compute.stops.kind import Given
from generator.compute.stops.kinds import KINDS
from generator.model.lesson import Lesson
from generator.model.library import Library


def work_out(lesson: Lesson, library: Library) -> LessonResult:
    """Compute a lesson whose names were all found when it was read."""
    worked: dict[str, WorkedStop] = {}
    counted = dict(stop.counts for stop in lesson.file.stops if stop.counts)
    given = Given(lesson, library, counted, worked)
    for kind in KINDS.values():
        for stop, ids in zip(lesson.file.stops, lesson.ids, strict=True):
            if stop.kind == kind.name:
                worked[ids.stop] = kind.work(stop, ids, given)
    figures = ledger(lesson, worked)
    comparisons = {name: one for name, one in worked.items() if isinstance(one, Comparison)}
    found = dict(answers(lesson, figures, comparisons))
    return LessonResult(lesson, worked, (*figures, *answer_figures(found)), library, found)
