"""A quiz worked out: how many answers there are to choose from."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.figure import Figure
from generator.compute.result import WorkedStop
from generator.compute.steps import AsWritten
from generator.compute.stops.kind import Given, WorkedKind, none_counted
from generator.model.figure import FigureKind, Tally
from generator.model.ids import StopIds
from generator.model.measure import Measure
from generator.model.stops.quiz import QuizStop


@dataclass(frozen=True, slots=True)
class Quiz(WorkedStop):
    """A quiz with its number."""

    choices: int


def _work(stop: QuizStop, _: StopIds, __: Given) -> Quiz:
    return Quiz(len(stop.choices))


def _figures(stop: str, quiz: Quiz) -> Iterator[Figure]:
    yield Figure(
        id=f"{stop}.choices",
        kind=FigureKind.COUNT,
        value=Decimal(quiz.choices),
        measure=Measure.ENERGY,
        unit=Tally.TIMES,
        exact=Fraction(quiz.choices),
        stop=stop,
        steps=(AsWritten("choices"),),
    )


KIND = WorkedKind(stop=QuizStop, after=(), work=_work, figures=_figures, counted=none_counted)
