"""A new lesson from the starter file."""

from __future__ import annotations

from pathlib import Path

from generator.read.lesson import RESERVED
from generator.write.new_lesson import new_lesson


def begin_lesson(root: Path, title: str) -> Path:
    """Make a new lesson from the starter file; returns its lesson file.

    Raises:
        LessonError: when no folder can be made for the title.
    """
    return new_lesson(root, title, RESERVED)
