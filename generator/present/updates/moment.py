"""The moments of the record in words: days and times of UTC, for the record knows no other."""

from __future__ import annotations

from datetime import datetime

from generator.present.words.say import Say


def day_in_words(at: str, say: Say) -> str:
    """``March 14, 2026`` of ``2026-03-14T17:03:00Z``, by CLDR; the text itself where it is no moment."""
    try:
        return say.day(datetime.fromisoformat(at).date())
    except ValueError:
        return at


def time_in_words(at: str) -> str:
    """``17:03 UTC``, or nothing."""
    try:
        return datetime.fromisoformat(at).strftime("%H:%M UTC")
    except ValueError:
        return ""
