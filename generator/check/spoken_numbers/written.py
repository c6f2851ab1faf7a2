"""Numbers that an educator wrote herself, which no page computes."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from generator.compute.result import LessonResult
from generator.language import language_of
from generator.model.amount import parse_amount
from generator.model.figure import FigureKind
from generator.model.stops.day import DayStop

_TEXTS = ("prompt", "hint", "reveal", "ideas", "title", "did")


def written(result: LessonResult, index: int) -> frozenset[Decimal]:
    """Numbers up to a stop: in its texts, in amounts, in minutes.

    They pass, for a page shows them; whether they are true is a matter of those texts.
    """
    file, language = result.lesson.file, language_of(result.lesson.language)
    found = {Decimal(file.minutes), Decimal(file.grades.first), Decimal(file.grades.last)}
    texts = [file.title, file.summary, *file.goals, *file.you_need]
    for at, stop in enumerate(file.stops[: index + 1]):
        for name in _TEXTS:
            value = getattr(stop, name, None)
            texts += [value] if isinstance(value, str) else list(value or ())
        found |= set(_amounts(result, result.lesson.stop_id(at)))
        if isinstance(stop, DayStop):
            found.add(Decimal(stop.person.age))
    found |= {number.value for text in texts for number in language.numbers_in(text)}
    return frozenset(found)


def _amounts(result: LessonResult, stop: str) -> Iterator[Decimal]:
    for figure in result.of_stop(stop):
        for held in figure.foods if figure.kind is FigureKind.HOLDS else ():
            amount = parse_amount(held.item.amount or "")
            if amount:
                yield Decimal(amount.number.numerator) / Decimal(amount.number.denominator)
