"""A row whose gap gives no count: the page says so, and there is no card for it."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.result import LessonResult, Movement
from generator.problems import Problem, Weight


@rule
def something_to_move(result: LessonResult) -> Iterator[Problem]:
    """A question for each move that would be done 0 times, and for each row that rests though it gives a count."""
    for index, stop in enumerate(result.lesson.file.stops):
        movement = result.movements.get(result.lesson.stop_id(index))
        for number, what, hint in _told(movement) if movement else ():
            place = result.lesson.places.at("stops", index, stop.kind, "moves", number - 1)
            yield Problem(place, what, hint, Weight.QUESTION)


def _told(movement: Movement) -> Iterator[tuple[int, str, str]]:
    """Number of a row, what there is to ask, and the way out."""
    unit, counts = movement.comparison.stop.measure.unit, movement.comparison.counts
    asked = {one.number: one for one in movement.counts}
    for number, row in enumerate(movement.comparison.rows, 1):
        gap, counted = row.gap, asked.get(number)
        if counted is None and counts and counts.rows[number - 1].whole:
            what = f"row {number} rests, though its gap of {gap.size:,} {unit} gives a count"
            yield number, what, "give it a move"
        elif counted and not counted.count.whole and gap.size:
            small = f"its gap of {gap.size} {unit} is less than `one_move_per`"
            hint = "make `one_move_per` smaller, or choose another food or amount"
            yield number, f"row {number} leaves nothing to move: {small}", hint
        elif counted and not counted.count.whole:
            what = f"row {number} leaves nothing to move: both sides hold {gap.first:,} {unit}"
            yield (
                number,
                what,
                "choose another food or amount; or write `rest` here if zero is meant",
            )
