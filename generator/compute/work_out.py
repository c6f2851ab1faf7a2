"""A lesson and the library into every number its pages show."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from generator.compute.count import count_moves
from generator.compute.gap import Gap, total_gap
from generator.compute.label import Shown, label_value
from generator.compute.result import Comparison, Holding, LessonResult, MoveCount, Movement, Row
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.stops.compare import CompareStop, Item
from generator.model.stops.move import MoveStop


def work_out(lesson: Lesson, library: Library) -> LessonResult:
    """Compute a lesson whose names were all found when it was read."""
    stops = lesson.file.stops
    per = {stop.compare: stop.one_move_per for stop in stops if isinstance(stop, MoveStop)}
    comparisons = {
        stop.id: _compare(stop, per.get(stop.id), library)
        for stop in stops
        if isinstance(stop, CompareStop)
    }
    movements = {
        lesson.stop_id(index): _movement(stop, comparisons[stop.compare], library)
        for index, stop in enumerate(stops)
        if isinstance(stop, MoveStop)
    }
    return LessonResult(lesson, comparisons, movements)


def _compare(stop: CompareStop, per: Decimal | None, library: Library) -> Comparison:
    rows = tuple(_row(row, stop.measure, per, library) for row in stop.rows)
    total = total_gap(tuple(row.gap for row in rows))
    return Comparison(stop, rows, total, count_moves(total.size, per) if per else None)


def _row(items: tuple[Item, Item], measure: Measure, per: Decimal | None, library: Library) -> Row:
    first, second = (_holding(item, measure, library) for item in items)
    gap = Gap(first.shown.value, second.shown.value, first.shown.exact - second.shown.exact)
    return Row((first, second), gap, count_moves(gap.size, per) if per else None)


def _holding(item: Item, measure: Measure, library: Library) -> Holding:
    food = library.foods[item.food] if item.food else None
    if item.value is not None:
        # A label's figure was rounded by its maker; rounding it again would change what the child can read there.
        shown = Shown(item.value, Fraction(item.value), f"as printed: {item.source}")
        return Holding(item, food, None, None, shown)
    serving = food.serving(item.amount or "") if food else None
    per_100g = food.value(measure) if food else None
    if serving is None or per_100g is None:
        raise ValueError(f"{item.food}, {item.amount}: not found when the lesson was read")
    exact = Fraction(per_100g) * serving.grams / 100
    return Holding(item, food, serving, Fraction(per_100g), label_value(measure, exact))


def _movement(stop: MoveStop, comparison: Comparison, library: Library) -> Movement:
    counts = tuple(
        MoveCount(
            move_id, library.moves[move_id], row, count_moves(row.gap.size, stop.one_move_per)
        )
        for move_id, row in zip(stop.moves, comparison.rows, strict=True)
    )
    return Movement(stop, comparison, counts)
