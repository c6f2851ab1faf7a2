"""The one gap of a lesson that a family finds again at home."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.compute.gap import Gap
from generator.compute.result import Comparison, Day, LessonResult, Row
from generator.model.measure import Measure
from generator.model.stops.compare import Help
from generator.present.pages.practice import practice_views
from generator.present.pictures.columns import columns
from generator.present.views.family import AgainView, GivenView
from generator.present.words.amounts import gap_sentence, portion
from generator.present.words.day import leaning, who
from generator.present.words.say import Say, digits


@dataclass(frozen=True, slots=True)
class Again:
    """What is found again, and which gap of the lesson it is."""

    view: AgainView
    of: Row | Day | None
    """Its gap is said nowhere else on the sheet; nothing where a practice problem stands in."""


def again_of(result: LessonResult, say: Say) -> Again:
    """A row that the learner works out without help; else a day; else the first practice problem."""
    rows = [
        (row.gap.size > 0, one.stop.rows[at].help is Help.NONE, one, row)
        for one in result.comparisons.values()
        for at, row in enumerate(one.rows)
    ]
    if rows:
        _, _, one, row = max(rows, key=lambda found: found[:2])
        return _of_row(one, row, say)
    if result.days:
        return _of_day(next(iter(result.days.values())), say)
    return _of_practice(result, say)


def _of_row(one: Comparison, row: Row, say: Say) -> Again:
    stop, gap = one.stop, row.gap
    given = tuple(
        GivenView(side, portion(held, say), say.quantity(held.shown.value, stop.measure))
        for side, held in zip(stop.sides, row.sides, strict=True)
    )
    says = gap_sentence(gap, stop.sides, stop.measure, say)
    return Again(_view(say("family_again_asks"), given, gap, says), row)


def _of_day(day: Day, say: Say) -> Again:
    balance = day.balance
    given = (
        GivenView(say("day_eaten"), "", say.quantity(balance.eaten, Measure.ENERGY)),
        GivenView(say("day_needed"), "", say.quantity(balance.needed, Measure.ENERGY)),
    )
    asks = f"{who(day.stop.person, say)} {say('day_by_how_much')}"
    return Again(_view(asks, given, balance.both, leaning(balance, say)), day)


def _view(asks: str, given: tuple[GivenView, ...], gap: Gap, says: str) -> AgainView:
    squares = columns(digits(gap.larger), digits(gap.smaller), digits(gap.size))
    return AgainView(asks, given, squares, says)


def _of_practice(result: LessonResult, say: Say) -> Again:
    problem, *_ = practice_views(result, say, 1)
    first, second = Decimal(problem.first), Decimal(problem.second)
    squares = columns(problem.first, problem.second, digits(abs(first - second)))
    return Again(AgainView(problem.says, (), squares, problem.answer), None)
