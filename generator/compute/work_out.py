"""A lesson and the library into every number its pages show."""

from __future__ import annotations

from decimal import Decimal

from generator.compute.count import count_moves
from generator.compute.day import day_balance
from generator.compute.energy_needs import energy_need
from generator.compute.gap import Gap, total_gap
from generator.compute.holding import hold
from generator.compute.reference_bodies import REFERENCE_ADULTS
from generator.compute.result import Comparison, Day, LessonResult, MoveCount, Movement, Row
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.stops.compare import CompareStop, Item
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop


def work_out(lesson: Lesson, library: Library) -> LessonResult:
    """Compute a lesson whose names were all found when it was read."""
    stops = lesson.file.stops
    per = {stop.compare: stop.one_move_per for stop in stops if isinstance(stop, MoveStop)}
    comparisons = {
        stop.id: _compare(stop, ids.parts, per.get(stop.id), library)
        for stop, ids in zip(stops, lesson.ids, strict=True)
        if isinstance(stop, CompareStop)
    }
    movements = {
        lesson.stop_id(index): _movement(stop, comparisons[stop.compare], library)
        for index, stop in enumerate(stops)
        if isinstance(stop, MoveStop)
    }
    days = {
        lesson.stop_id(index): _day(stop, library)
        for index, stop in enumerate(stops)
        if isinstance(stop, DayStop)
    }
    return LessonResult(lesson, comparisons, movements, days)


def _compare(
    stop: CompareStop, names: tuple[str, ...], per: Decimal | None, library: Library
) -> Comparison:
    rows = tuple(
        _row(name, row.foods, stop.measure, per, library)
        for name, row in zip(names, stop.rows, strict=True)
    )
    total = total_gap(tuple(row.gap for row in rows))
    return Comparison(stop, rows, total, count_moves(total.size, per) if per else None)


def _row(
    name: str, items: tuple[Item, Item], measure: Measure, per: Decimal | None, library: Library
) -> Row:
    first, second = (hold(item, measure, library) for item in items)
    gap = Gap(first.shown.value, second.shown.value, first.shown.exact - second.shown.exact)
    return Row(name, (first, second), gap, count_moves(gap.size, per) if per else None)


def _movement(stop: MoveStop, comparison: Comparison, library: Library) -> Movement:
    counts = tuple(
        MoveCount(
            move_id, library.moves[move_id], row, count_moves(row.gap.size, stop.one_move_per)
        )
        for move_id, row in zip(stop.moves, comparison.rows, strict=True)
    )
    return Movement(stop, comparison, counts)


def _day(stop: DayStop, library: Library) -> Day:
    person = stop.person
    eaten = tuple(hold(item, Measure.ENERGY, library) for item in stop.ate)
    body = REFERENCE_ADULTS[person.sex]
    need = energy_need(person.sex, person.age, body, person.activity)
    balance = day_balance((held.shown.value for held in eaten), need.kcal)
    return Day(stop, eaten, body, need, balance)
