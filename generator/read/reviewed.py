"""``reviewed.yaml``: who read a lesson, and what it was given for."""

from __future__ import annotations

from pathlib import Path

from generator.model.reviewed import REVIEWED, Reviewed, ReviewedFile
from generator.problems import Problem
from generator.read.explain import validate
from generator.read.kept_file import read_kept

LARGEST_REVIEWED = 500_000
"""Bytes of the file: some ten readings of a lesson with all the numbers and texts it can have."""


def read_reviewed(root: Path, folder: str, problems: list[Problem]) -> Reviewed | None:
    """The readings of a lesson; nothing where none was kept.

    Args:
        root: folder of the site.
        folder: the lesson's own folder, from the root.
        problems: where mistakes in the file are added.
    """
    source = read_kept(root, f"{folder}/{REVIEWED}", LARGEST_REVIEWED, problems)
    if source is None:
        return None
    made = validate(ReviewedFile, source.data, source.places)
    if isinstance(made, list):
        problems += made
        return None
    return Reviewed(made, source.places)
