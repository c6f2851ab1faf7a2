"""Which numbers of a film are no longer the lesson's, by what each of them is of.

A filmed number finds its number of today by its kind, its measure, its foods and its move, never by
where it stood. So rows may change places, be added and be renamed. A number whose food has gone
finds none: there is nothing that could be said about it beside the film.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal

from generator.compute.result import LessonResult
from generator.compute.showing import Showing, showings
from generator.compute.timeline import on_air, spans
from generator.model.figure import FigureKind
from generator.model.measure import Measure
from generator.model.names import TOTAL
from generator.model.recorded import FilmedFigure, FilmedFood

_Key = tuple[FigureKind, Measure, tuple[str, ...], str, str, str]


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
        if self.now is None:
            return False
        today = filmed_foods(self.now)
        return sorted(map(repr, self.filmed.foods)) != sorted(map(repr, today))


def changed_figures(result: LessonResult) -> tuple[ChangedFigure, ...]:
    """The numbers to be said anew, in the order of the video; none while nothing was recorded."""
    recorded = result.lesson.recorded
    if recorded is None:
        return ()
    figures = recorded.file.figures
    today = _matched(figures, showings(result))
    return tuple(
        ChangedFigure(filmed, today[number], number)
        for number, filmed in enumerate(figures)
        if _value(today[number]) != filmed.value
    )


def values_as_filmed(result: LessonResult) -> dict[str, frozenset[Decimal]]:
    """By stop: values of the film that the lesson has changed since; the film's captions are right to say them."""
    found: dict[str, frozenset[Decimal]] = {}
    times = spans(result.lesson.file.stops)
    for changed in changed_figures(result):
        stops = {changed.now.stop if changed.now else changed.filmed.stop}
        if times:
            span = on_air(times, int(changed.filmed.start * 1000))
            stops.add(result.lesson.stop_id(span.index))
        for stop in stops:
            found[stop] = found.get(stop, frozenset()) | {changed.filmed.value}
    return found


def filmed_foods(showing: Showing) -> tuple[FilmedFood, ...]:
    """What a number is of, as a record keeps it."""
    return tuple(
        FilmedFood.model_construct(food=held.id, amount=held.item.amount)
        for held in showing.figure.foods
    )


def _value(showing: Showing | None) -> Decimal | None:
    return showing.figure.value if showing else None


def _matched(filmed: Sequence[FilmedFigure], today: Sequence[Showing]) -> list[Showing | None]:
    """For each filmed number the one of today; a number of today serves one of the film, and each time it is said again."""
    found: list[Showing | None] = [None] * len(filmed)
    pairs = sorted(
        _likeness(one, showing, at, place)
        for at, one in enumerate(filmed)
        for place, showing in enumerate(today)
        if _key(one) == _key_of(showing)
    )
    taken: set[int] = set()
    for *_, at, place in pairs:
        if found[at] is None and place not in taken:
            found[at] = today[place]
            taken.add(place)
    for at, one in enumerate(filmed):
        found[at] = found[at] or next(_as_large(one, today), None) or next(_again(one, today), None)
    return found


def _likeness(
    filmed: FilmedFigure, showing: Showing, at: int, place: int
) -> tuple[bool, bool, bool, bool, int, int]:
    """Sorts the likest pair first: of the same amounts, as large, at the same stop, on the same side.

    Of two own values of one name the one that is as large is meant: the film is right of it.
    """
    return (
        sorted(map(repr, filmed.foods)) != sorted(map(repr, filmed_foods(showing))),
        filmed.value != showing.figure.value,
        filmed.stop != showing.stop,
        (filmed.side or "") != showing.side,
        at,
        place,
    )


def _as_large(filmed: FilmedFigure, today: Sequence[Showing]) -> Iterator[Showing]:
    """Sums over other foods that are as large as they were: what the film says is still right."""
    kind, measure, _, *rest = _key(filmed)
    for showing in today:
        other_kind, other_measure, _, *others = _key_of(showing)
        of_all = showing.figure.row in {TOTAL, ""} and filmed.stop == showing.stop
        alike = (kind, measure, rest) == (other_kind, other_measure, others)
        if of_all and alike and showing.figure.value == filmed.value:
            yield showing


def _again(filmed: FilmedFigure, today: Sequence[Showing]) -> Iterator[Showing]:
    """What was said once more at a stop that shows no number: the number itself, if that is left."""
    if all(showing.stop != filmed.stop for showing in today):
        yield from (showing for showing in today if _key(filmed) == _key_of(showing))


def _key(filmed: FilmedFigure) -> _Key:
    side = filmed.side or "" if filmed.kind is FigureKind.TOTAL else ""
    foods = tuple(sorted(food.food for food in filmed.foods))
    return filmed.kind, filmed.measure, foods, side, filmed.move or "", filmed.person or ""


def _key_of(showing: Showing) -> _Key:
    figure = showing.figure
    side = showing.side if figure.kind is FigureKind.TOTAL else ""
    foods = tuple(sorted(held.id for held in figure.foods))
    return figure.kind, figure.measure, foods, side, showing.move, showing.person
