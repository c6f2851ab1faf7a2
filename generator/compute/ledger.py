"""The ledger: the one list of every number of a lesson.

Trace, spoken numbers, claims, recorded figures, corrections and checkable answers read it from
``LessonResult.figures``; nobody else lists a lesson's numbers.
"""

from __future__ import annotations

from collections.abc import Mapping

from generator.compute.figure import Figure
from generator.compute.result import WorkedStop
from generator.compute.stops.kinds import KINDS
from generator.model.lesson import Lesson


def ledger(lesson: Lesson, worked: Mapping[str, WorkedStop]) -> tuple[Figure, ...]:
    """Every number of a lesson that is worked out, in the order of its stops."""
    return tuple(
        figure
        for stop, ids in zip(lesson.file.stops, lesson.ids, strict=True)
        if stop.kind in KINDS
        for figure in KINDS[stop.kind].figures(ids.stop, worked[ids.stop])
    )
