"""The sheet of numbers to say: each number of the film in its order, as it is shown and as it is said."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from itertools import groupby

from generator.compute.filmed_match import as_filmed_today
from generator.compute.recorded import changed_figures
from generator.compute.result import LessonResult
from generator.compute.showing import Showing, showings
from generator.compute.timeline import seconds
from generator.language import language_of
from generator.model.figure import FigureKind
from generator.model.moment import clock
from generator.model.recorded import FilmedFigure
from generator.present.pages.in_lesson import PageInLesson
from generator.present.recording.filmed import heard_as_either, seen_or_heard
from generator.present.recording.gone import gone_line
from generator.present.recording.showing_name import showing_name
from generator.present.recording.views import NumbersView, NumberView, StopNumbersView
from generator.present.words.amounts import portion
from generator.present.words.say import Say, digits

_WITHOUT_TIMES = frozenset(FigureKind) - {FigureKind.MINUTES, FigureKind.ONE_MOVE_PER}
"""What may be said of a lesson whose stops have no times, so that nobody knows what its film shows."""


@dataclass(frozen=True, slots=True)
class _Line:
    """A number to say."""

    could_be: tuple[Showing, ...]
    """What it is; more than one where nobody can tell."""
    at: str
    """When the lesson says it, such as ``1:19``; empty without times."""

    @property
    def showing(self) -> Showing:
        """The first of what it could be."""
        return self.could_be[0]


def numbers_view(told: PageInLesson) -> NumbersView:
    """The sheet of one lesson: after filming, first what must be filmed again."""
    result, say = told.result, told.surround.say
    lines, recorded = _lines(result, say), result.lesson.recorded
    kept = recorded if recorded and not recorded.by_place else None
    right = _still_right(result) if kept else frozenset()
    headings = {stop.head.id: stop.head.heading for stop in told.stops}
    before = {one.now.figure.id: one.filmed for one in changed_figures(result) if one.now}

    def told_by_stop(chosen: Iterable[_Line]) -> tuple[StopNumbersView, ...]:
        return tuple(_by_stop(chosen, headings, lambda one: _view(one, before, result, say)))

    gone = tuple(gone_line(one, say) for one in changed_figures(result) if one.now is None)
    to_say = told_by_stop(one for one in lines if one.showing.figure.id not in right)
    return NumbersView(
        page=told.page,
        title=result.lesson.file.title,
        back=told.links.filming[0],
        lesson=result.lesson.id,
        says=_says(bool(kept), bool(to_say or gone), say),
        to_say=to_say,
        gone=gone,
        filmed_on=kept.file.filmed if kept else "",
        filmed=told_by_stop(one for one in lines if one.showing.figure.id in right),
    )


def _says(filmed: bool, more: bool, say: Say) -> str:  # noqa: FBT001  # two facts, four sentences
    if not filmed:
        return say("numbers_first")
    return say("numbers_again") if more else say("recording_again_none")


def _lines(result: LessonResult, say: Say) -> tuple[_Line, ...]:
    """In the order of the film; a lesson without times has its numbers in the order of its stops."""
    clear = [((showing,), start) for showing, (start, _) in seen_or_heard(result, say)]
    either = [(numbers, start) for numbers, (start, _) in heard_as_either(result, say)]
    found = sorted([*clear, *either], key=lambda both: both[1])
    if found:
        return tuple(_Line(numbers, clock(seconds(start))) for numbers, start in found)
    shown = (one for one in showings(result) if one.figure.kind in _WITHOUT_TIMES)
    return tuple(_Line((one,), "") for one in shown)


def _still_right(result: LessonResult) -> frozenset[str]:
    """Numbers of the ledger that the film says as they are."""
    recorded = result.lesson.recorded
    filmed: Sequence[FilmedFigure] = recorded.file.figures if recorded else ()
    today = as_filmed_today(filmed, showings(result))
    known = {one.figure.id for one in today if one}
    changed = {one.now.figure.id for one in changed_figures(result) if one.now}
    return frozenset(known - changed)


def _by_stop(
    lines: Iterable[_Line], headings: dict[str, str], view: Callable[[_Line], NumberView]
) -> Iterator[StopNumbersView]:
    for stop, some in groupby(lines, key=lambda one: one.showing.stop):
        yield StopNumbersView(headings[stop], tuple(map(view, some)))


def _view(
    line: _Line, before: dict[str, FilmedFigure], result: LessonResult, say: Say
) -> NumberView:
    figure, filmed = line.showing.figure, before.get(line.showing.figure.id)
    value, unit = figure.value, figure.measure.unit
    spell = language_of(say.language).spelled
    was = (
        say("numbers_was", filmed=say.number(filmed.value), at=clock(filmed.start))
        if filmed
        else ""
    )
    return NumberView(
        key=f"{line.showing.stop} {figure.id} {digits(value)}",
        at=line.at,
        what=" / ".join(dict.fromkeys(_what(one, result, say) for one in line.could_be)),
        side=_side(line.showing, result),
        shown=say.quantity(value, figure.measure) if figure.unit is unit else say.number(value),
        said=spell(Decimal(value)) if spell else "",
        was=was,
    )


def _what(showing: Showing, result: LessonResult, say: Say) -> str:
    figure = showing.figure
    if figure.kind is FigureKind.HOLDS:
        return portion(figure.foods[0], say)
    return showing_name(showing, result, say)


def _side(showing: Showing, result: LessonResult) -> str:
    """The name of the side of what a food holds; a total is called by it already."""
    figure, comparisons = showing.figure, result.comparisons
    if figure.kind is not FigureKind.HOLDS or figure.side is None:
        return ""
    comparison = comparisons.get(figure.stop)
    return comparison.stop.sides[figure.side] if comparison else ""
