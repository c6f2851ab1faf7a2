"""The slides of a lesson: what the video shows while the script is spoken."""

from __future__ import annotations

from generator.present.recording.slides.order import slides
from generator.present.recording.slides.picture import pictures
from generator.present.recording.slides.slide import (
    Before,
    Held,
    Line,
    MoveCount,
    Pause,
    Question,
    RowOfTwo,
    Slide,
)

__all__ = [
    "Before",
    "Held",
    "Line",
    "MoveCount",
    "Pause",
    "Question",
    "RowOfTwo",
    "Slide",
    "pictures",
    "slides",
]
