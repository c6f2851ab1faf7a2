"""A film as its file says it is: what browsers go by when they play it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Sound(StrEnum):
    """Whether a film is heard."""

    NONE = "none"
    PLAYED = "played"
    UNKNOWN = "unknown"
    """It has a sound that not every browser plays."""


@dataclass(frozen=True, slots=True)
class Film:
    """A film in its container."""

    seconds: float
    """Length."""
    size: int
    """Bytes, of its file and of what is published."""
    sound: Sound
    """What is heard with it."""
    old_phones: bool
    """Whether its picture is one that phones of some years ago play too: H.264."""
    begins_at_once: bool
    """Whether its index stands before its pictures, so that it plays while it loads."""
    rehearsal: bool
    """Whether it is a silent one that this program made of the slides."""


FILM_KEYS = ("file", "smaller", "slides")
"""Keys of ``video:`` that name a film, the one that a page shows first."""

REHEARSAL_MARK = "Plumline rehearsal"
"""Stands in a rehearsal's own description: a film of someone's has no such mark and is never replaced."""
