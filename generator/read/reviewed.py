"""``reviewed.yaml``: who read a lesson, and what it was given for."""

from __future__ import annotations

from pathlib import Path

from generator.model.reviewed import REVIEWED, Reviewed, ReviewedFile
from generator.problems import Problem
from generator.read.explain import validate
from generator.read.files import read_text
from generator.read.source import read_source

LARGEST_REVIEWED = 500_000
"""Bytes of the file: some ten readings of a lesson with all the numbers and texts it can have."""


def read_reviewed(root: Path, folder: str, problems: list[Problem]) -> Reviewed | None:
    """The readings of a lesson; nothing where none was kept.

    Args:
        root: folder of the site.
        folder: the lesson's own folder, from the root.
        problems: where mistakes in the file are added.
    """
    path = f"{folder}/{REVIEWED}"
    if not (root / path).is_file():
        return None
    text = read_text(root, path, LARGEST_REVIEWED)
    if isinstance(text, Problem):
        problems.append(text)
        return None
    source = read_source(path, text)
    problems += source.problems
    if source.problems:
        return None
    made = validate(ReviewedFile, source.data, source.places)
    if isinstance(made, list):
        problems += made
        return None
    return Reviewed(made, source.places)
