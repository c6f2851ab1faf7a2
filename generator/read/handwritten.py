"""The educator's hand-written pages beside the lessons."""

from __future__ import annotations

import re
from pathlib import Path

from generator.problems import Place, Problem
from generator.read.files import LARGEST_LESSON, read_text

FRONT = ("index", "README")
"""Either becomes the front page."""
_DEEPEST = 60
"""Brackets open at once, or lists inside one another."""
_NESTED = re.compile(r"(?:[-*+>][ \t]*|\d+[.)][ \t]+)*")
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


def read_page(root: Path, path: str) -> str | Problem:
    """The text of a page, or why it cannot be had or would keep Markdown busy for minutes."""
    text = read_text(root, path, LARGEST_LESSON)
    if isinstance(text, Problem):
        return text
    depth = 0
    for number, line in enumerate(text.splitlines(), 1):
        depth = depth + line.count("[") - line.count("]") if line.strip() else 0
        if depth > _DEEPEST:
            what = "far more brackets are opened here than closed"
            return Problem(Place(path, number), what, "close each `[` with a `]`")
        nested = _NESTED.match(line)
        if nested and nested.end() > 2 * _DEEPEST:
            what = "lists or quotes stand inside one another far too deep here"
            return Problem(Place(path, number), what, "begin the line with fewer signs")
    return text


def _title(root: Path, file: Path) -> str:
    """The first heading; the file's name where it has none or cannot be read, which is told elsewhere."""
    text = read_text(root, file.relative_to(root).as_posix())
    lines = [] if isinstance(text, Problem) else text.splitlines()
    for line in lines:
        if found := _HEADING.match(line):
            return line[found.end() :].strip().rstrip("#").rstrip()
    return file.stem.replace("-", " ").capitalize()
