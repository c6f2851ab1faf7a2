"""A first draft of the captions: the script as WebVTT, in the time the lesson gives it."""

from __future__ import annotations

from generator.model.captions import DRAFT_NOTE
from generator.model.lesson import Lesson
from generator.present.recording.spoken import spoken
from generator.present.recording.webvtt import cue, webvtt


def caption_draft(lesson: Lesson) -> str:
    """WebVTT of everything that is said at the stops of a lesson, within the site's limits."""
    cues = (cue(one.start, one.end, "\n".join(one.lines)) for one in spoken(lesson))
    return webvtt([f"NOTE {DRAFT_NOTE}", *cues])
