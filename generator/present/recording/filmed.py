"""The numbers that a video of a lesson shows or says, each with its time."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal

from generator.compute.filmed_match import filmed_foods
from generator.compute.result import LessonResult
from generator.compute.showing import Showing, shown_at
from generator.compute.timeline import seconds
from generator.model.figure import FigureKind
from generator.model.recorded import FilmedFigure
from generator.present.recording.slides.order import slides
from generator.present.recording.spoken import spoken
from generator.present.words.say import Say

Times = tuple[int, int]
"""From and to, in ms."""

_NOT_SAID = {FigureKind.LEFT_OVER, FigureKind.MINUTES, FigureKind.ONE_MOVE_PER}
"""Numbers that a digit in the script is not taken for: it is another one of the same size."""
_OF_ROWS = {FigureKind.HOLDS, FigureKind.GAP, FigureKind.TOTAL}
"""What is looked back at once the rows are worked out."""
_NUMBER = re.compile(r"\d[\d,]*(?:\.\d+)?")


def filmed_figures(result: LessonResult, say: Say) -> tuple[FilmedFigure, ...]:
    """What stands on the slides, and what the script says in digits at the number's own stop."""
    seen = tuple(_on_slides(result, say))
    found = sorted((*seen, *_heard(result, seen)), key=lambda both: both[1])
    return tuple(_filmed(showing, times) for showing, times in found)


def _on_slides(result: LessonResult, say: Say) -> Iterator[tuple[Showing, Times]]:
    """The numbers of the rows and counts, while their slide stands."""
    for slide in slides(result, say):
        stop = result.lesson.stop_id(slide.stop)
        for showing in shown_at(result, stop):
            if showing.figure.id in slide.shows:
                yield showing, (slide.start, slide.start + slide.duration)


def _heard(
    result: LessonResult, seen: Sequence[tuple[Showing, Times]]
) -> Iterator[tuple[Showing, Times]]:
    """Numbers said in digits while no slide shows them: at their stop, or below it where none is shown.

    A number that could be two things of its stop is left out: nobody can say which it is when one
    of them changes. The check of captions still asks for it.
    """
    shown = {(showing.figure.id, showing.stop) for showing, _ in seen}
    for ids in result.lesson.ids:
        said = _said(result, ids.stop, seen)
        own = [one for one in _sayable(result, ids.stop) if one.figure.kind not in _NOT_SAID]
        sizes = Counter(showing.figure.value for showing in own)
        for showing in own:
            value = showing.figure.value
            unseen = (showing.figure.id, showing.stop) not in shown
            if unseen and value in said and sizes[value] == 1:
                yield showing, said[value]


def _sayable(result: LessonResult, stop: str) -> tuple[Showing, ...]:
    """What may be said at a stop: what it shows or, where it shows no number, the rows and totals above."""
    if own := shown_at(result, stop):
        return own
    names = [ids.stop for ids in result.lesson.ids]
    above = (one for name in names[: names.index(stop)] for one in shown_at(result, name))
    return tuple(replace(one, stop=stop) for one in above if one.figure.kind in _OF_ROWS)


def _said(
    result: LessonResult, stop: str, seen: Sequence[tuple[Showing, Times]]
) -> dict[Decimal, Times]:
    """Numbers in digits at a stop, each with the time it is said first; not those a slide shows then."""
    said: dict[Decimal, Times] = {}
    for cue in spoken(result.lesson):
        if result.lesson.stop_id(cue.index) != stop:
            continue
        for found in _NUMBER.findall(" ".join(cue.lines)):
            number = Decimal(found.replace(",", ""))
            on_slide = any(
                showing.figure.value == number and start < cue.end and cue.start < end
                for showing, (start, end) in seen
            )
            if not on_slide:
                said.setdefault(number, (cue.start, cue.end))
    return said


def _filmed(showing: Showing, times: Times) -> FilmedFigure:
    """Whole seconds around the time: nobody cuts a film finer by reading a list."""
    start, end = map(seconds, times)
    return FilmedFigure.model_construct(
        kind=showing.figure.kind,
        measure=showing.figure.measure,
        foods=filmed_foods(showing),
        beside=showing.beside or None,
        side=showing.side or None,
        move=showing.move or None,
        person=showing.person or None,
        change=showing.change or None,
        asked=showing.asked or None,
        value=showing.figure.value,
        stop=showing.stop,
        start=start.to_integral_value(ROUND_FLOOR),
        end=end.to_integral_value(ROUND_CEILING),
    )
