"""The record of a film, beside its lesson."""

from __future__ import annotations

from pathlib import Path

RECORDED = "recorded.yaml"
"""As ``model/recorded.py`` names it, which this room does not see."""


def write_recorded(folder: Path, text: str) -> Path:
    """Write the record into the lesson's folder, over an older one; returns the file."""
    file = folder / RECORDED
    part = folder / f".{RECORDED}.part"  # beside it, so that the swap is one step on any disk
    part.unlink(missing_ok=True)  # never write through a link
    part.write_text(text, "utf-8", newline="\n")
    part.replace(file)
    return file
