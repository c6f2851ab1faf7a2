"""The script as it is read out: paragraphs of each stop, and where to wait."""

from __future__ import annotations

from collections.abc import Sequence

from generator.compute.result import LessonResult
from generator.compute.timeline import seconds, spans
from generator.model.moment import clock
from generator.present.recording.spoken import paragraphs
from generator.present.recording.views import ScriptStopView, SpokenView
from generator.present.views.stop import StopView
from generator.present.words.say import Say


def script_stops(
    result: LessonResult, stops: Sequence[StopView], say: Say
) -> tuple[ScriptStopView, ...]:
    """Every stop at which something is said."""
    planned = {span.index: span for span in spans(result.lesson.file.stops)}
    found = []
    for index, stop in enumerate(result.lesson.file.stops):
        said = paragraphs(stop.say or "")
        span = planned.get(index)
        waits = span is not None and span.pauses
        parts = tuple(
            SpokenView(text, len(text.split()), halts=waits and number == len(said))
            for number, text in enumerate(said, 1)
        )
        begins = clock(seconds(span.start)) if span else ""
        ends = clock(seconds(span.end)) if span else ""
        pause = say("recording_pause", at=ends) if waits else ""
        if parts:
            found.append(ScriptStopView(stops[index].head.heading, begins, parts, pause))
    return tuple(found)
