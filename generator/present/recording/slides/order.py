"""Which slide is shown when: the stops of a lesson along the time of its video."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import accumulate, pairwise

from generator.compute.result import LessonResult
from generator.compute.timeline import Span, spans
from generator.present.recording.slides.contents import contents, pause
from generator.present.recording.slides.slide import Content, Slide
from generator.present.recording.spoken import Cue, spoken
from generator.present.words.say import Say

PAUSE_LEAD = 2_000
"""ms the pause slide is seen before its pause point: time to read it and to reach for a button."""
TAIL = 2_000
"""ms the last slide stays after the last moment of the lesson."""
_GLIMPSE = 500
"""ms that are left to a slide when a pause point follows too soon."""

_Timed = tuple[int, int, Content]
"""Start in ms, index of the stop, and what is shown."""


def slides(result: LessonResult, say: Say) -> tuple[Slide, ...]:
    """The slides in order, without a break from the start of the video to its end.

    A pause slide stands from two seconds before its pause point until one second after it, so
    a player that halts a little early or late shows it all the same. A lesson whose stops have
    no times has no slides.
    """
    stops = result.lesson.file.stops
    found = spans(stops)
    timed: list[_Timed] = []
    heard = _first_heard(spoken(result.lesson))
    for span in found:
        timed += _span(span, result, heard, timed[-1][0] if timed else -_GLIMPSE, say)
    if not timed:
        return ()
    later = accumulate((start for start, _, _ in timed[1:]), max, initial=0)
    starts = list(
        later
    )  # the first is shown from the very beginning, and none before the one above it
    ends = [*starts[1:], max(starts[-1], found[-1].end) + TAIL]
    return tuple(
        Slide(start, end - start, index, len(stops), content)
        for start, end, (_, index, content) in zip(starts, ends, timed, strict=True)
        if end > start
    )


def _span(
    span: Span, result: LessonResult, heard: Mapping[tuple[int, int], int], before: int, say: Say
) -> Iterator[_Timed]:
    """Slides of one stop, and its pause slide; ``before`` is where the slide above begins."""
    last = min(span.end, max(span.end - PAUSE_LEAD, before + _GLIMPSE)) if span.pauses else span.end
    shown = contents(span.index, result, say)
    if span.start < last:
        for start, content in zip(_starts(span, last, len(shown), heard), shown, strict=True):
            yield start, span.index, content
    if span.pauses:
        yield last, span.index, pause(span.index, result, say)


def _starts(span: Span, last: int, number: int, heard: Mapping[tuple[int, int], int]) -> list[int]:
    """Where each slide begins: with its paragraph of the script, or in equal shares of the time."""
    paragraphs = [start for (index, _), start in heard.items() if index == span.index]
    begins = [span.start, *paragraphs[1:]]
    fits = len(paragraphs) == number and all(
        one < other for one, other in pairwise([*begins, last])
    )
    return (
        begins
        if fits
        else [span.start + (last - span.start) * place // number for place in range(number)]
    )


def _first_heard(cues: Sequence[Cue]) -> dict[tuple[int, int], int]:
    """When each paragraph of each stop begins, in ms."""
    heard: dict[tuple[int, int], int] = {}
    for cue in cues:
        heard.setdefault((cue.index, cue.paragraph), cue.start)
    return heard
