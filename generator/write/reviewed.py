"""Who read a lesson, beside it."""

from __future__ import annotations

from pathlib import Path

from generator.write.whole import write_whole

REVIEWED = "reviewed.yaml"
"""As ``model/reviewed.py`` names it, which this room does not see."""


def write_reviewed(folder: Path, text: str) -> Path:
    """Write the readings into the lesson's folder, over the older file; returns the file."""
    return write_whole(folder / REVIEWED, text, newline="\n")
