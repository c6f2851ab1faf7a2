"""Numbers beside those of the ledger: amounts of foods, what a stop shows besides, hops that help."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from generator.compute.count_up import count_up
from generator.compute.result import LessonResult
from generator.model.amount import parse_amount
from generator.model.figure import FigureKind
from generator.model.measure import Measure, Unit

Given = frozenset[tuple[Decimal, Unit | None]]
"""Each number with the unit that it is given in; nothing for a household unit or none at all."""


def given(result: LessonResult, last: int) -> Given:
    """Numbers up to a stop, that one among them.

    They pass in the unit they are given in: *100 grams* of a food that is weighed, *46* years.
    """
    found: set[tuple[Decimal, Unit | None]] = set()
    for at, stop in enumerate(result.lesson.file.stops[: last + 1]):
        found.update(_amounts(result, result.lesson.stop_id(at)))
        found.update((number, None) for number in stop.own_numbers)
        found.update(_hops(result, result.lesson.stop_id(at), own=at == last))
    return frozenset(found)


def _hops(result: LessonResult, stop: str, *, own: bool) -> Iterator[tuple[Decimal, Unit | None]]:
    """Where the hops of rows and days with help land, and how long they are: what is worked is read aloud."""
    for smaller, larger, unit in _helped(result, stop, own=own):
        for hop in count_up(smaller, larger):
            yield from ((number, one) for number in (hop.end, hop.size) for one in (None, unit))


def _helped(
    result: LessonResult, stop: str, *, own: bool
) -> Iterator[tuple[Decimal, Decimal, Unit]]:
    """Smaller and larger number of each subtraction whose hops are drawn, with their unit.

    Those of a day pass at its own stop alone: later on they could be said of a food by mistake.
    """
    if comparison := result.comparisons.get(stop):
        for row, entry in zip(comparison.rows, comparison.stop.rows, strict=True):
            if entry.help.shows_hops:
                yield row.gap.smaller, row.gap.larger, comparison.stop.measure.unit
    if own and (day := result.days.get(stop)) and day.stop.help.shows_hops:
        yield day.balance.both.smaller, day.balance.both.larger, Measure.ENERGY.unit


def _amounts(result: LessonResult, stop: str) -> Iterator[tuple[Decimal, Unit | None]]:
    for figure in result.of_stop(stop):
        for held in figure.foods if figure.kind is FigureKind.HOLDS else ():
            amount = parse_amount(held.item.amount or "")
            if amount:
                number = Decimal(amount.number.numerator) / Decimal(amount.number.denominator)
                yield number, None if amount.grams is None else Unit.GRAM
