"""Cues with too many lines, or too long ones, for a small screen."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.problems import Place, Problem, Weight


@rule
def shape(result: LessonResult) -> Iterator[Problem]:
    """One or two lines of at most 32 letters, unless the educator set others (``CaptionLimits``)."""
    limits = result.lesson.caption_limits
    for file in result.lesson.captions.values():
        for cue in file.cues:
            if len(cue.lines) > limits.lines:
                what = f"this cue has {len(cue.lines)} lines; {limits.lines} are read at a glance"
                yield Problem(cue.place, what, "make two cues of it", Weight.QUESTION)
            for number, line in enumerate(cue.lines, 1):
                if len(line) > limits.line:
                    place = Place(cue.place.path, cue.place.line + number, limits.line + 1)
                    what = f"this line has {len(line)} letters; {limits.line} fit"
                    yield Problem(place, what, "break it, or make two cues of it", Weight.QUESTION)
