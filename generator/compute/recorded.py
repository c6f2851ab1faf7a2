"""Which numbers of a film are no longer the lesson's, by what each of them is of."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.compute.filmed_match import as_filmed_today
from generator.compute.result import LessonResult
from generator.compute.showing import Showing, showings
from generator.compute.timeline import on_air, spans
from generator.model.recorded import FilmedFigure


@dataclass(frozen=True, slots=True)
class ChangedFigure:
    """A number that was filmed as one value and is another now."""

    filmed: FilmedFigure
    """As the film has it."""
    now: Showing | None
    """What it is today and where; nothing where the lesson has no such number any more."""
    number: int
    """Which entry of the record it is, from 0."""

    @property
    def of_other_amount(self) -> bool:
        """Whether the foods are those of the film in other amounts."""
        return self.now is not None and _amounts(self.filmed) != _amounts_of(self.now)


def changed_figures(result: LessonResult) -> tuple[ChangedFigure, ...]:
    """The numbers to be said anew, in the order of the video; none while nothing was recorded."""
    recorded = result.lesson.recorded
    if recorded is None:
        return ()
    figures = recorded.file.figures
    today = as_filmed_today(figures, showings(result))
    return tuple(
        ChangedFigure(filmed, today[number], number)
        for number, filmed in enumerate(figures)
        if _value(today[number]) != filmed.value
    )


def heard_at(filmed: FilmedFigure, result: LessonResult) -> str:
    """Id of the stop of today during which the film says a number; the first where no stop has a time."""
    times, lesson = spans(result.lesson.file.stops), result.lesson
    if times:
        return lesson.stop_id(on_air(times, int(filmed.start * 1000)).index)
    stops = [ids.stop for ids in lesson.ids]
    return filmed.stop if filmed.stop in stops else stops[0]


def values_as_filmed(result: LessonResult) -> dict[str, frozenset[Decimal]]:
    """By stop: values of the film that the lesson has changed since; the film's captions are right to say them."""
    found: dict[str, frozenset[Decimal]] = {}
    for changed in changed_figures(result):
        shown = changed.now.stop if changed.now else changed.filmed.stop
        for stop in {shown, heard_at(changed.filmed, result)}:
            found[stop] = found.get(stop, frozenset()) | {changed.filmed.value}
    return found


def _amounts(filmed: FilmedFigure) -> list[str]:
    return sorted(food.amount or "" for food in filmed.foods)


def _amounts_of(showing: Showing) -> list[str]:
    return sorted(held.item.amount or "" for held in showing.figure.foods)


def _value(showing: Showing | None) -> Decimal | None:
    return showing.figure.value if showing else None
