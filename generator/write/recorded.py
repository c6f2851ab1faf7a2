"""The record of a film, beside its lesson."""

from __future__ import annotations

from pathlib import Path

from generator.write.whole import write_whole

RECORDED = "recorded.yaml"
"""As ``model/recorded.py`` names it, which this room does not see."""


def write_recorded(folder: Path, text: str) -> Path:
    """Write the record into the lesson's folder, over an older one; returns the file."""
    return write_whole(folder / RECORDED, text, newline="\n")
