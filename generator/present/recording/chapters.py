"""The stops as chapters of the video: a WebVTT track that players list by themselves."""

from __future__ import annotations

from itertools import pairwise

from generator.compute.result import LessonResult
from generator.compute.timeline import Span, parts
from generator.present.recording.webvtt import cue, webvtt
from generator.present.stops.in_lesson import in_lesson
from generator.present.words.say import Say


def chapters_file(result: LessonResult, say: Say) -> str:
    """Name of the track beside the lesson page; empty where the lesson has none."""
    video = result.lesson.file.video
    return (
        f"chapters.{say.language}.vtt"
        if video and video.file and parts(result.lesson.file.stops)
        else ""
    )


def chapters_track(result: LessonResult, say: Say) -> str:
    """A chapter for each stop that has a time, named by the stop's id.

    A chapter begins where the talk that leads up to its pause begins, and ends where the next one
    begins, so that a click on it never lands on the pause itself. A stop that takes no time, as
    when two of them share a moment, has no chapter.
    """
    found = parts(result.lesson.file.stops)
    ends = [max(one.end, other.start) for one, other in pairwise(found)]
    return webvtt(
        _chapter(span, end, result, say)
        for span, end in zip(found, [*ends, found[-1].end], strict=True)
    )


def _chapter(span: Span, end: int, result: LessonResult, say: Say) -> str:
    stop = in_lesson(span.index, result, say)
    title = " ".join(stop.heading.split())  # a chapter's title is one line
    return cue(span.start, end, title, stop.id)
