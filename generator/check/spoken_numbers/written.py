"""Numbers that an educator wrote herself, which no page computes."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from generator.compute.result import LessonResult
from generator.language import language_of
from generator.model.amount import parse_amount
from generator.model.figure import FigureKind
from generator.model.text_marks import For
from generator.model.texts import lesson_texts


def written(result: LessonResult, index: int) -> frozenset[Decimal]:
    """Numbers up to a stop: in its texts, in amounts, in minutes.

    They pass, for a page shows them; whether they are true is a matter of those texts.
    """
    file, language = result.lesson.file, language_of(result.lesson.language)
    found = {Decimal(file.minutes), Decimal(file.grades.first), Decimal(file.grades.last)}
    for at, stop in enumerate(file.stops[: index + 1]):
        found |= {*_amounts(result, result.lesson.stop_id(at)), *stop.own_numbers}
    read = lesson_texts(file, For.LEARNER_READS)
    texts = [one.text for one in read if one.stop is None or one.stop <= index]
    found |= {number.value for text in texts for number in language.numbers_in(text)}
    return frozenset(found)


def _amounts(result: LessonResult, stop: str) -> Iterator[Decimal]:
    for figure in result.of_stop(stop):
        for held in figure.foods if figure.kind is FigureKind.HOLDS else ():
            amount = parse_amount(held.item.amount or "")
            if amount:
                yield Decimal(amount.number.numerator) / Decimal(amount.number.denominator)
