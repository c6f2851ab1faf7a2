"""Writes a translation beside its lesson; never over words that are there."""

from __future__ import annotations

from pathlib import Path

from generator.problems import LessonError, Place, Problem
from generator.write.whole import write_whole


def write_draft(root: Path, path: str, text: str) -> Path:
    """Write a first draft.

    Raises:
        LessonError: the file is there already.
    """
    file = root / path
    if file.exists():
        hint = "add what is missing there; python3 generator check names it"
        raise LessonError([Problem(Place(path), "this translation is there already", hint)])
    return write_whole(file, text)


def write_marks(root: Path, path: str, text: str) -> Path:
    """Write a translation file with its new marks, whole or not at all."""
    return write_whole(root / path, text)
