"""The film in parts, each a link that halts by itself: how a film keeps its pauses where no script runs."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import zip_longest

from generator.compute.result import LessonResult
from generator.compute.timeline import next_pause, seconds, spans
from generator.model.moment import clock
from generator.model.stops import Stop
from generator.present.views.video import PartView
from generator.present.words.say import Say, digits


def film_parts(result: LessonResult, say: Say) -> Mapping[str, PartView]:
    """What of the film is watched at a stop, or after it is done: up to the next pause, or to the end.

    A stop that shares its moment with the next one has none: the other has its turn first.

    Returns:
        Parts by id of a stop; none where the site has no film of its own.
    """
    lesson = result.lesson
    if not (lesson.file.video and lesson.file.video.file):
        return {}
    return {
        lesson.stop_id(index): _part(start, end, say)
        for index, start, end in _parts(lesson.file.stops)
    }


def _parts(stops: Sequence[Stop]) -> Iterator[tuple[int, int, int | None]]:
    """Each with the index of its stop, in ms; its end is missing where the film runs to its own."""
    found = spans(stops)
    for span, after in zip_longest(found, found[1:]):
        start = span.end if span.pauses else span.start
        if not (span.pauses and after and after.pauses and after.end == span.end):
            yield span.index, start, next_pause(stops, start)


def _part(start: int, end: int | None, say: Say) -> PartView:
    begins, at = seconds(start), clock(seconds(start))
    if end is None:
        return PartView(digits(begins), say("watch_rest", start=at))
    ends = seconds(end)
    return PartView(
        f"{digits(begins)},{digits(ends)}", say("watch_part", start=at, end=clock(ends))
    )
