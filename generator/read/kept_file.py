"""A file that a command keeps beside a lesson, such as ``recorded.yaml``, as data with its places."""

from __future__ import annotations

from pathlib import Path

from generator.problems import Problem
from generator.read.files import read_text
from generator.read.source import Source, read_source


def read_kept(root: Path, path: str, largest: int, problems: list[Problem]) -> Source | None:
    """What the file holds; nothing where there is none, or where it must be put right first.

    Args:
        root: folder of the site.
        path: of the file, from the root.
        largest: bytes it may have.
        problems: where mistakes in the file are added.
    """
    if not (root / path).is_file():
        return None
    text = read_text(root, path, largest)
    if isinstance(text, Problem):
        problems.append(text)
        return None
    source = read_source(path, text)
    problems += source.problems
    return None if source.problems else source
