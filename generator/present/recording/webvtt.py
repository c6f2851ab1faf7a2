"""WebVTT, the W3C's format for captions and chapters: a head line, a blank line, then cues."""

from __future__ import annotations

from collections.abc import Iterable


def webvtt(blocks: Iterable[str]) -> str:
    """A whole file of notes and cues."""
    return "\n\n".join(["WEBVTT", *blocks]) + "\n"


def cue(start: int, end: int, text: str, name: str = "") -> str:
    """One cue.

    Args:
        start: ms.
        end: ms, later than ``start``.
        text: one or more lines, none of them blank.
        name: what scripts may call it by; no two cues of a file have the same.
    """
    escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return (f"{name}\n" if name else "") + f"{webvtt_time(start)} --> {webvtt_time(end)}\n{escaped}"


def webvtt_time(milliseconds: int) -> str:
    """``01:05.250``, with hours where there are any."""
    seconds, rest = divmod(milliseconds, 1000)
    minutes, seconds = divmod(seconds, 60)
    hours, minutes = divmod(minutes, 60)
    return (f"{hours:02}:" if hours else "") + f"{minutes:02}:{seconds:02}.{rest:03}"
