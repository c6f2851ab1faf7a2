"""The educator's hand-written pages beside the lessons."""

from __future__ import annotations

import re
from pathlib import Path

from generator.problems import Problem
from generator.read.files import read_text

FRONT = ("index", "README")
"""Either becomes the front page."""
_HEADING = re.compile(r"#[ \t]+(?=\S)")


def handwritten_pages(root: Path, folder: str = "") -> tuple[tuple[str, str], ...]:
    """Address in its folder and title of every Markdown page there but the front page.

    Args:
        root: folder of the site.
        folder: a language's folder below ``lessons/``, or nothing for the first language.
    """
    files = sorted((root / "lessons" / folder).glob("*.md"))
    pages = [file for file in files if file.stem not in FRONT and not file.is_symlink()]
    return tuple((f"{file.stem}.html", _title(root, file)) for file in pages)


def _title(root: Path, file: Path) -> str:
    """The first heading; the file's name where it has none or cannot be read, which is told elsewhere."""
    text = read_text(root, file.relative_to(root).as_posix())
    lines = [] if isinstance(text, Problem) else text.splitlines()
    for line in lines:
        if found := _HEADING.match(line):
            return line[found.end() :].strip().rstrip("#").rstrip()
    return file.stem.replace("-", " ").capitalize()
