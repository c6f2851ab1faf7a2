"""Whether a lesson is a draft, told even of a file that cannot be read as a lesson."""

from __future__ import annotations

import re
from pathlib import Path

from generator.problems import Place
from generator.read.files import LARGEST_LESSON, read_text
from generator.read.source import read_source

_LINE = re.compile(r"^draft:[ \t]+true[ \t]*(?:#.*)?$", re.MULTILINE)


def draft_place(root: Path, path: str) -> Place | None:
    """Where a lesson file says ``draft: true``; nothing where it does not, or is no text.

    A draft may be half written. Where its YAML cannot be read, the line by itself counts.

    Args:
        root: folder of the site.
        path: the lesson file below it.
    """
    text = read_text(root, path, LARGEST_LESSON)
    if not isinstance(text, str) or "draft" not in text:
        return None
    source = read_source(path, text)
    if isinstance(source.data, dict):
        return source.keys[("draft",)] if source.data.get("draft") is True else None
    line = _LINE.search(text)
    return Place(path, text.count("\n", 0, line.start()) + 1) if line else None
