"""Cues that stand on the screen at the same time."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.model.captions import clock_ms
from generator.problems import Problem, Weight


@rule
def overlap(result: LessonResult) -> Iterator[Problem]:
    """A cue that begins before another one has gone; two at once cover the picture."""
    for file in result.lesson.captions.values():
        latest = 0
        for cue in file.cues:
            if cue.start_ms < latest:
                what = f"this cue begins at {clock_ms(cue.start_ms)}, and another one stands until {clock_ms(latest)}"
                yield Problem(
                    cue.place, what, "let one end before the next begins", Weight.QUESTION
                )
            latest = max(latest, cue.end_ms)
