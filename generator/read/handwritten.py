"""The educator's hand-written pages beside the lessons."""

from __future__ import annotations

import re
from pathlib import Path

FRONT = ("index", "README")
"""Either becomes the front page."""
_HEADING = re.compile(r"^#\s+(.+?)\s*#*$", re.MULTILINE)


def handwritten_pages(root: Path, folder: str = "") -> tuple[tuple[str, str], ...]:
    """Address in its folder and title of every Markdown page there but the front page.

    Args:
        root: folder of the site.
        folder: a language's folder below ``lessons/``, or nothing for the first language.
    """
    files = sorted((root / "lessons" / folder).glob("*.md"))
    return tuple((f"{file.stem}.html", _title(file)) for file in files if file.stem not in FRONT)


def _title(file: Path) -> str:
    """The first heading; the file's name where it has none."""
    found = _HEADING.search(file.read_text("utf-8", errors="replace"))
    return found[1] if found else file.stem.replace("-", " ").capitalize()
