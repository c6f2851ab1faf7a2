"""Speech that is cut in two where the player halts, or begins before a late halt is over."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.compute.timeline import HOLD, pause_points
from generator.model.captions import clock_ms
from generator.problems import Problem, Weight


@rule
def over_pause(result: LessonResult) -> Iterator[Problem]:
    """A cue that begins before a pause point and ends after it, or begins in the hold behind it."""
    pauses = sorted({span.end for span in pause_points(result.lesson.file.stops)})
    for file in result.lesson.captions.values():
        for cue in file.cues:
            for pause in pauses:
                if cue.start_ms < pause < cue.end_ms:
                    what = f"this cue runs over the pause at {clock_ms(pause)}"
                    hint = f"end it by then, or set the pause to {clock_ms(cue.end_ms)} or later"
                    yield Problem(cue.place, what, hint, Weight.QUESTION)
                if pause <= cue.start_ms < pause + HOLD:
                    what = (
                        f"this cue begins {_after(cue.start_ms - pause)} the pause at "
                        f"{clock_ms(pause)}, and a player that halts a little late shows it"
                    )
                    hint = f"begin it at {clock_ms(pause + HOLD)} or later"
                    yield Problem(cue.place, what, hint, Weight.QUESTION)


def _after(milliseconds: int) -> str:
    return f"{milliseconds / 1000:g} seconds after" if milliseconds else "right at"
