"""A first draft of the captions: the script as WebVTT, in the time the lesson gives it.

WebVTT is the W3C's format: a head line, a blank line, then cues with times to the millisecond.
"""

from __future__ import annotations

from collections.abc import Sequence

from generator.model.stops import Stop
from generator.present.spoken import Cue, spoken

DRAFT_NOTE = "Draft made from the script. Delete this note before you edit, and the draft is never made over your words."


def caption_draft(stops: Sequence[Stop]) -> str:
    """WebVTT of everything that is said at the stops of a lesson."""
    blocks = ["WEBVTT", f"NOTE {DRAFT_NOTE}", *map(_block, spoken(stops))]
    return "\n\n".join(blocks) + "\n"


def _block(cue: Cue) -> str:
    text = "\n".join(cue.lines).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return f"{webvtt_time(cue.start)} --> {webvtt_time(cue.end)}\n{text}"


def webvtt_time(milliseconds: int) -> str:
    """``01:05.250``, with hours where there are any."""
    seconds, rest = divmod(milliseconds, 1000)
    minutes, seconds = divmod(seconds, 60)
    hours, minutes = divmod(minutes, 60)
    return (f"{hours:02}:" if hours else "") + f"{minutes:02}:{seconds:02}.{rest:03}"
