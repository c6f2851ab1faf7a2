"""The numbers that a video of a lesson shows or says, each with its time."""

from __future__ import annotations

import re
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
    """As a record keeps them: what stands on the slides, and what the script says in digits."""
    return tuple(_filmed(showing, times) for showing, times in seen_or_heard(result, say))


def seen_or_heard(result: LessonResult, say: Say) -> tuple[tuple[Showing, Times], ...]:
    """What stands on the slides, and what the script says in digits at the number's own stop, in the order of the film."""
    seen = tuple(_on_slides(result, say))
    return tuple(sorted((*seen, *_heard(result, seen)), key=lambda both: both[1]))


def _on_slides(result: LessonResult, say: Say) -> Iterator[tuple[Showing, Times]]:
    """The numbers of the rows and counts, while their slide stands."""
    for slide in slides(result, say):
        stop = result.lesson.stop_id(slide.stop)
        for showing in shown_at(result, stop):
            if showing.figure.id in slide.shows:
                yield showing, (slide.start, slide.start + slide.duration)


def heard_as_either(
    result: LessonResult, say: Say
) -> tuple[tuple[tuple[Showing, ...], Times], ...]:
    """What the script says that could be several numbers, such as a total and that of a change.

    No record has these: nobody can say which it is when one of them changes. The check of captions
    still asks for them.
    """
    found = _sayings(result, tuple(_on_slides(result, say)))
    return tuple(one for one in found if len(one[0]) > 1)


def _heard(
    result: LessonResult, seen: Sequence[tuple[Showing, Times]]
) -> Iterator[tuple[Showing, Times]]:
    """Numbers said in digits while no slide shows them, of which it is clear what they are."""
    for numbers, times in _sayings(result, seen):
        if len(numbers) == 1:
            yield numbers[0], times


def _sayings(
    result: LessonResult, seen: Sequence[tuple[Showing, Times]]
) -> Iterator[tuple[tuple[Showing, ...], Times]]:
    """Numbers said in digits while no slide of their stop shows them, each with all that it could be."""
    shown = {(showing.figure.id, showing.stop) for showing, _ in seen}
    for ids in result.lesson.ids:
        sayable = _sayable(result, ids.stop)
        for value, times in _said(result, ids.stop, seen).items():
            could_be = tuple(one for one in sayable if one.figure.value == value)
            # An answer is one of the numbers above where it is as large as that.
            named = tuple(one for one in could_be if one.figure.kind is not FigureKind.ANSWER)
            if could_be and all((one.figure.id, ids.stop) not in shown for one in could_be):
                yield named or could_be, times


def _sayable(result: LessonResult, stop: str) -> tuple[Showing, ...]:
    """What may be said at a stop: what it shows, and the rows and totals above."""
    names = [ids.stop for ids in result.lesson.ids]
    above = (one for name in names[: names.index(stop)] for one in shown_at(result, name))
    own = (one for one in shown_at(result, stop) if one.figure.kind not in _NOT_SAID)
    looked_back = (replace(one, stop=stop) for one in above if one.figure.kind in _OF_ROWS)
    return (*own, *looked_back)


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
