"""Cues that go before they are read, or stay when nobody speaks their words any more."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight


@rule
def standing(result: LessonResult) -> Iterator[Problem]:
    """A cue stands for 1.3 to 6 seconds, unless the educator set others (``CaptionLimits``)."""
    limits = result.lesson.caption_limits
    for file in result.lesson.captions.values():
        for cue in file.cues:
            milliseconds = cue.end_ms - cue.start_ms
            seconds = f"{milliseconds / 1000:g}"
            if milliseconds < limits.shortest * 1000:
                what = f"this cue stands for {seconds} seconds, which is too short to see it"
                hint = f"give it {limits.shortest} seconds, or join it to its neighbor"
                yield Problem(cue.place, what, hint, Weight.QUESTION)
            if milliseconds > limits.longest * 1000:
                what = f"this cue stands for {seconds} seconds; {limits.longest} are the most"
                yield Problem(cue.place, what, "make two cues of it", Weight.QUESTION)
