"""No move, and no stop with all its moves, asks for more counts than is kind at the lesson's age."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from math import floor

from generator.check.rule import rule
from generator.compute.result import CountedMove, LessonResult
from generator.model.grades import GradeBand
from generator.problems import Problem

AT_ONE_STOP = {GradeBand.K_2: 30, GradeBand.G3_5: 60, GradeBand.G6_8: 80}
"""The most counts of one stop together. Ours and cautious, as the caps of the moves are."""


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


@rule
def counts_of_a_stop_within_its_cap(result: LessonResult) -> Iterator[Problem]:
    """All moves of a stop together over the cap of the lesson's youngest grades.

    Where one of them is over its own cap that is told, and nothing here.
    """
    band = result.lesson.file.grades.band
    for index, stop in enumerate(result.lesson.file.stops):
        movement = result.movements.get(result.lesson.stop_id(index))
        counts = movement.counts if movement else ()
        together = sum(counted.count.whole for counted in counts)
        each_fits = all(one.count.whole <= one.move.caps.for_band(band) for one in counts)
        if each_fits and together > AT_ONE_STOP[band]:
            place = result.lesson.places.at("stops", index, stop.kind, "moves")
            what = f"these moves are {together} counts together, and the most at one stop is {AT_ONE_STOP[band]} for grades {band}"
            yield Problem(place, what, _fewer(counts, AT_ONE_STOP[band]))


def _fewer(counts: tuple[CountedMove, ...], most: int) -> str:
    """The smallest easy step that keeps all counts of a stop together within their cap."""
    needed = next(
        (
            step
            for step in (1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500)
            if sum(floor(counted.row.gap.size / step) for counted in counts) <= most
        ),
        1000,
    )
    return f"make `one_move_per` {needed} or more, or let a row `rest`"


def _enough(counts: tuple[CountedMove, ...], band: GradeBand) -> Decimal:
    """The smallest easy step that keeps every count of the stop within its cap."""
    needed = max(
        counted.row.gap.size / (counted.move.caps.for_band(band) + 1) for counted in counts
    )
    for step in (1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500):
        if step > needed:
            return Decimal(step)
    return Decimal((floor(needed / 100) + 1) * 100)
