"""The rows and the totals of a compare stop as questions that can be asked away from its page."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from generator.compute.count import Count
from generator.compute.holding import Holding
from generator.compute.result import Comparison, Row
from generator.model.figure import FigureKind
from generator.model.names import TOTAL
from generator.model.stops.compare import CompareStop, Help, Solve
from generator.present.stops.asked_question import wrong_views
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.row import row_hint
from generator.present.views.question import QuestionView
from generator.present.words.amounts import division, gap_working, portion
from generator.present.words.counting import count_hint, count_question
from generator.present.words.likely import wrong_counts, wrong_gaps
from generator.present.words.prose import plain
from generator.present.words.say import Say
from generator.present.words.typed import typed


def compare_questions(told: StopInLesson[CompareStop], _: object) -> tuple[QuestionView, ...]:
    """Gap and count of each row that is asked, and the gap of the totals, in the order of the page."""
    return tuple(_questions(told, told.result.comparisons[told.id]))


def _questions(told: StopInLesson[CompareStop], comparison: Comparison) -> Iterator[QuestionView]:
    counts = comparison.counts.rows if comparison.counts else None
    for at, row in enumerate(comparison.rows):
        if comparison.stop.rows[at].help is Help.WORKED:
            continue
        if Solve.GAP in told.stop.solve:
            yield _gap(told, row, at)
        if Solve.COUNT in told.stop.solve and counts:
            yield _count(told, row, counts[at], at)
    if Solve.TOTAL in told.stop.solve:
        yield _total(told, comparison)


def _gap(told: StopInLesson[CompareStop], row: Row, at: int) -> QuestionView:
    """Both foods with what they hold, and how much more it is."""
    say, stop = told.say, told.stop
    holds = (_holds(stop.sides[side], held, stop, say) for side, held in enumerate(row.sides))
    unit = stop.measure.unit
    working = gap_working(row.gap, None, stop.sides, stop.measure, say)
    return QuestionView(
        id=f"{told.id}.{row.id}.{FigureKind.GAP}",
        title=f"{told.plain_heading}. {say('platform_gap_of_row', number=at + 1)}",
        lines=(*holds, say("platform_apart", unit=unit)),
        options=(),
        right=typed(row.gap.size, say, unit),
        wrong=wrong_views(wrong_gaps(row.gap, say), say),
        hint=row_hint(row.gap, say),
        answer=(*working.lines, plain(working.says)),
    )


def _count(told: StopInLesson[CompareStop], row: Row, count: Count, at: int) -> QuestionView:
    """Two bare numbers and no food: a count is of no food and of no unit."""
    say, gap = told.say, row.gap
    numbers = {"larger": say.number(gap.larger), "smaller": say.number(gap.smaller)}
    return QuestionView(
        id=f"{told.id}.{row.id}.{FigureKind.COUNT}",
        title=f"{told.plain_heading}. {say('platform_count_of_row', number=at + 1)}",
        lines=(
            say("platform_two_numbers", **numbers),
            f"{count_question(count.per, say)} {say('platform_whole')}",
            say("move_team"),
        ),
        options=(),
        right=typed(Decimal(count.whole), say),
        wrong=wrong_views(wrong_counts(gap, count, say), say),
        hint=count_hint(count.per, say),
        answer=(division(gap, count, say),),
    )


def _total(told: StopInLesson[CompareStop], comparison: Comparison) -> QuestionView:
    """What stands on each side, to be added up, and the gap between both sums."""
    say, stop, total = told.say, told.stop, comparison.total
    unit = stop.measure.unit
    sums = (
        say("platform_side", side=plain(name), sum=_sum(comparison, side, say))
        for side, name in enumerate(stop.sides)
    )
    working = gap_working(total, None, stop.sides, stop.measure, say)
    return QuestionView(
        id=f"{told.id}.{TOTAL}.{FigureKind.GAP}",
        title=f"{told.plain_heading}. {say('finish_total')}",
        lines=(*sums, say("platform_totals", unit=unit)),
        options=(),
        right=typed(total.size, say, unit),
        wrong=wrong_views(wrong_gaps(total, say), say),
        hint="",
        answer=(*working.lines, plain(working.says)),
    )


def _holds(side: str, held: Holding, stop: CompareStop, say: Say) -> str:
    """``Home lunch: Apple, 1 medium (95 kcal)``."""
    food = portion(held, say)
    value = say.quantity(held.shown.value, stop.measure)
    return say("platform_holds", side=plain(side), food=plain(food), value=value)


def _sum(comparison: Comparison, side: int, say: Say) -> str:
    numbers = (say.number(row.sides[side].shown.value) for row in comparison.rows)
    return say.from_left(" + ".join(numbers))
