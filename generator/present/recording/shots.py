"""The shot list: what each stop needs on the table."""

from __future__ import annotations

from generator.compute.result import LessonResult
from generator.present.recording.views import ShotView
from generator.present.stops.in_lesson import in_lesson
from generator.present.stops.kinds import kind_of
from generator.present.words.say import Say


def shot_list(result: LessonResult, say: Say) -> tuple[ShotView, ...]:
    """What to have ready, by stop; stops that need nothing are left out."""
    shots = (
        ShotView(in_lesson(index, result, say).heading, on_the_table(index, result, say))
        for index in range(len(result.lesson.file.stops))
    )
    needed = result.lesson.file.you_need
    learner = (ShotView(say("recording_you_need"), needed),) if needed else ()
    return (*(shot for shot in shots if shot.things), *learner)


def on_the_table(index: int, result: LessonResult, say: Say) -> tuple[str, ...]:
    """Foods, or what the moves need, at one stop."""
    stop = in_lesson(index, result, say)
    return kind_of(stop).table(stop)
