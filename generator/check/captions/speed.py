"""Cues that are gone faster than a child of the lesson's grades reads."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import ROUND_UP, Decimal

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight


@rule
def speed(result: LessonResult) -> Iterator[Problem]:
    """Words a minute over what the band of the youngest grade reads (``CaptionLimits``).

    Every word counts, also the name of a speaker and a sound in brackets: DCMP Captioning Key
    (read, status R).
    """
    limits = result.lesson.caption_limits
    band = result.lesson.file.grades.band
    fastest = limits.fastest(band)
    for file in result.lesson.captions.values():
        for cue in file.cues:
            words = sum(len(line.split()) for line in cue.lines)
            milliseconds = cue.end_ms - cue.start_ms
            pace = words * 60_000 // milliseconds
            if pace > fastest:
                what = f"this cue runs at {pace} words a minute; for grades {band} it is {fastest} at most"
                needed = (Decimal(words * 60) / fastest).quantize(Decimal("0.1"), ROUND_UP)
                hint = f"let it stand for {needed} seconds, or say it in fewer words"
                yield Problem(cue.place, what, hint, Weight.QUESTION)
