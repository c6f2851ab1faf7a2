"""Cues that nobody will ever see, because the video is over."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.compute.rounding import whole
from generator.model.captions import clock_ms
from generator.problems import Problem, Weight

_SLACK = 500
"""ms; the last picture stands that long in many recordings, and stops have the same slack."""


@rule
def beyond_end(result: LessonResult) -> Iterator[Problem]:
    """A cue that ends after the video does."""
    seconds = result.lesson.duration
    if seconds is None:
        return
    length = whole(Fraction(seconds) * 1000)
    for file in result.lesson.captions.values():
        for cue in file.cues:
            if cue.end_ms > length + _SLACK:
                what = f"this cue ends at {clock_ms(cue.end_ms)}, and the video lasts {clock_ms(length)}"
                yield Problem(
                    cue.place, what, "look whether it belongs to this video", Weight.QUESTION
                )
