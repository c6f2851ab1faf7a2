"""What the lesson computes, and which of it may be spoken of at a stop."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from generator.check.claims.mentions import Seat
from generator.compute.result import Comparison, Day, LessonResult
from generator.language import language_of
from generator.model.amount import parse_amount
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop

_TEXTS = ("prompt", "hint", "reveal", "ideas", "title", "did")


@dataclass(frozen=True, slots=True)
class Figure:
    """A number of the lesson, with what it is."""

    value: Decimal
    what: str
    """``Apple pie``, ``the gap of row 2``."""
    unit: str = ""


def near(result: LessonResult, index: int) -> tuple[Figure, ...]:
    """Figures of a stop: of its own comparison or day, of those above it, else of the next below."""
    stops = result.lesson.file.stops
    above = [at for at in range(index, -1, -1) if _shows(stops[at])]
    below = [at for at in range(index + 1, len(stops)) if _shows(stops[at])]
    return tuple(figure for at in above or below[:1] for figure in _figures(result, at))


def comparison_of(result: LessonResult, index: int) -> Comparison | None:
    """The comparison a stop speaks of: its own, the last above, else the next below; none at a day."""
    stops = result.lesson.file.stops
    if isinstance(stops[index], DayStop):
        return None
    for at in (*range(index, -1, -1), *range(index + 1, len(stops))):
        stop = stops[at]
        if isinstance(stop, CompareStop | MoveStop):
            return result.comparisons[stop.compare if isinstance(stop, MoveStop) else stop.id]
    return None


def value_at(comparison: Comparison, seat: Seat) -> Decimal:
    """The shown value of a food."""
    row, side = seat
    return comparison.rows[row].sides[side].shown.value


def name_at(comparison: Comparison, seat: Seat, language: str) -> str:
    """What a food is called on the page."""
    row, side = seat
    return comparison.rows[row].sides[side].name(language).words


def written(result: LessonResult, index: int) -> frozenset[Decimal]:
    """Numbers the educator wrote herself up to this stop: in its texts, in amounts, in minutes.

    They pass, for a page shows them; whether they are true is a matter of those texts.
    """
    file, language = result.lesson.file, language_of(result.lesson.language)
    found = {Decimal(file.minutes), Decimal(file.grades.first), Decimal(file.grades.last)}
    texts = [file.title, file.summary, *file.goals, *file.you_need]
    for stop in file.stops[: index + 1]:
        for name in _TEXTS:
            value = getattr(stop, name, None)
            texts += [value] if isinstance(value, str) else list(value or ())
        found |= set(_amounts(result, stop.id or ""))
        if isinstance(stop, DayStop):
            found.add(Decimal(stop.person.age))
    found |= {number.value for text in texts for number in language.numbers_in(text)}
    return frozenset(found)


def _amounts(result: LessonResult, stop_id: str) -> Iterator[Decimal]:
    comparison, day = result.comparisons.get(stop_id), result.days.get(stop_id)
    held = [side for row in comparison.rows for side in row.sides] if comparison else []
    for one in (*held, *(day.eaten if day else ())):
        amount = parse_amount(one.item.amount or "")
        if amount:
            yield Decimal(amount.number.numerator) / Decimal(amount.number.denominator)


def _shows(stop: object) -> bool:
    return isinstance(stop, CompareStop | DayStop)


def _figures(result: LessonResult, at: int) -> Iterator[Figure]:
    name = result.lesson.stop_id(at)
    if name in result.comparisons:
        yield from _of_comparison(result.comparisons[name], result.lesson.language)
    elif name in result.days:
        yield from _of_day(result.days[name], result.lesson.language)


def _of_comparison(comparison: Comparison, language: str) -> Iterator[Figure]:
    unit = comparison.stop.measure.unit
    for number, row in enumerate(comparison.rows, 1):
        for held in row.sides:
            yield Figure(held.shown.value, held.name(language).words, unit)
        yield Figure(row.gap.size, f"the gap of row {number}", unit)
        if row.count:
            yield Figure(Decimal(row.count.whole), f"the count of row {number}")
            yield Figure(row.count.left_over, f"what is left over of row {number}", unit)
    for side, value in zip(
        comparison.stop.sides, (comparison.total.first, comparison.total.second), strict=True
    ):
        yield Figure(value, f"the total of {side}", unit)
    yield Figure(comparison.total.size, "the gap of the totals", unit)
    if comparison.per:
        yield Figure(Decimal(comparison.per.whole), "the count of the totals")
        yield Figure(comparison.per.left_over, "what is left over of the totals", unit)
        yield Figure(comparison.per.per, "what one count stands for", unit)


def _of_day(day: Day, language: str) -> Iterator[Figure]:
    for held in day.eaten:
        yield Figure(held.shown.value, held.name(language).words, "kcal")
    yield Figure(day.balance.eaten, f"what {day.stop.person.name} ate", "kcal")
    yield Figure(day.balance.needed, "what the day needs", "kcal")
    yield Figure(day.balance.gap, "the gap of the day", "kcal")
