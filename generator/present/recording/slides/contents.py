"""What the slides of a stop hold, each number from the same computation as the page."""

from __future__ import annotations

from generator.compute.result import LessonResult
from generator.present.recording.slides.slide import Content, Pause
from generator.present.stops.in_lesson import in_lesson
from generator.present.stops.kinds import kind_of
from generator.present.words.say import Say


def contents(index: int, result: LessonResult, say: Say) -> tuple[Content, ...]:
    """Slides of one stop without its pause; at least one."""
    stop = in_lesson(index, result, say)
    return kind_of(stop).slides(stop)


def pause(index: int, result: LessonResult, say: Say) -> Pause:
    """The slide at a stop's pause point."""
    stop = in_lesson(index, result, say)
    return Pause(stop.plain_heading, say("slide_pause"), kind_of(stop).task(stop))
