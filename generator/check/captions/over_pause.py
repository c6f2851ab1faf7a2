"""Speech that is cut in two where the player halts."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.result import LessonResult
from generator.model.captions import clock_ms
from generator.model.stops.watch import WatchStop
from generator.problems import Problem, Weight


def over_pause(result: LessonResult) -> Iterator[Problem]:
    """A cue that begins before a pause point and ends after it. A ``watch`` stop has none."""
    pauses = sorted(
        {
            int(stop.at * 1000)
            for stop in result.lesson.file.stops
            if stop.at is not None and not isinstance(stop, WatchStop)
        }
    )
    for file in result.lesson.captions.values():
        for cue in file.cues:
            for pause in pauses:
                if cue.start_ms < pause < cue.end_ms:
                    what = f"this cue runs over the pause at {clock_ms(pause)}"
                    hint = f"end it by then, or set the pause to {clock_ms(cue.end_ms)} or later"
                    yield Problem(cue.place, what, hint, Weight.QUESTION)
