"""The cue sheet: what is said at each stop, how long that takes, and whether the lesson gives the time."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from generator.compute.pace import seconds_to_say
from generator.compute.result import LessonResult
from generator.compute.timeline import HOLD, Span, seconds, spans
from generator.model.moment import clock
from generator.present.recording.shots import on_the_table
from generator.present.recording.views import CueView
from generator.present.views.stop import StopView
from generator.present.words.say import Say


def cue_sheet(
    result: LessonResult, stops: Sequence[StopView], pace: int, say: Say
) -> tuple[tuple[CueView, ...], CueView]:
    """A line for each stop, and the line below them.

    Args:
        result: the lesson with its numbers.
        stops: its stops as the page shows them, for their headings.
        pace: words a minute.
        say: words of the page's language.
    """
    planned = {span.index: span for span in spans(result.lesson.file.stops)}
    lines: list[CueView] = []
    running = words_in_all = 0
    for index, stop in enumerate(result.lesson.file.stops):
        words = len((stop.say or "").split())
        takes = seconds_to_say(words, pace)
        span = planned.get(index)
        lines.append(
            CueView(
                heading=stops[index].head.heading,
                planned=f"{_clock(span.start)}–{_clock(span.end)}" if span else "",
                words=say.number(words),
                spoken=say("recording_seconds", n=takes),
                given=say("recording_seconds", n=_given(span)) if span else "",
                fits=_fits(_given(span) - takes, say) if span and words else "",
                running=clock(Decimal(running)),
                table=on_the_table(index, result, say),
            )
        )
        words_in_all += words
        running += takes + (HOLD // 1000 if span and span.pauses else 0)
    return tuple(lines), _total(words_in_all, running, list(planned.values()), say)


def _total(words: int, running: int, planned: list[Span], say: Say) -> CueView:
    end = max((span.end for span in planned), default=0)
    return CueView(
        heading=say("recording_total"),
        planned=say("recording_ends", at=_clock(end)) if planned else "",
        words=say.number(words),
        spoken="",
        given="",
        fits="",
        running=clock(Decimal(running)),
        table=(),
    )


def _given(span: Span) -> int:
    """Whole seconds between the times of a stop; a part of one is no time to speak in."""
    return (span.end - span.start) // 1000


def _fits(rest: int, say: Say) -> str:
    if rest < 0:
        return say("recording_over", rest=say.number(-rest))
    return say("recording_fits", rest=say.number(rest))


def _clock(milliseconds: int) -> str:
    return clock(seconds(milliseconds))
