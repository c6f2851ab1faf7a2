"""No move is counted more often than is kind to a child of the lesson's age."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from math import floor

from generator.check.rule import rule
from generator.compute.result import CountedMove, LessonResult
from generator.model.grades import GradeBand
from generator.problems import Problem


@rule
def counts_within_caps(result: LessonResult) -> Iterator[Problem]:
    """A count over the move's cap for the lesson's youngest grades."""
    band = result.lesson.file.grades.band
    for index, stop in enumerate(result.lesson.file.stops):
        movement = result.movements.get(result.lesson.stop_id(index))
        for counted in movement.counts if movement else ():
            cap = counted.move.caps.for_band(band)
            if counted.count.whole > cap:
                place = result.lesson.places.at(
                    "stops", index, stop.kind, "moves", counted.number - 1
                )
                what = f"`{counted.move_id}` would be done {counted.count.whole} times, and its cap for grades {band} is {cap}"
                yield Problem(
                    place,
                    what,
                    f"make `one_move_per` {_enough(movement.counts if movement else (), band)} or more",
                )


def _enough(counts: tuple[CountedMove, ...], band: GradeBand) -> Decimal:
    """The smallest easy step that keeps every count of the stop within its cap."""
    needed = max(
        counted.row.gap.size / (counted.move.caps.for_band(band) + 1) for counted in counts
    )
    for step in (1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500):
        if step > needed:
            return Decimal(step)
    return Decimal((floor(needed / 100) + 1) * 100)
