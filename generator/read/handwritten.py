"""The educator's hand-written pages beside the lessons."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

from generator.problems import Place, Problem
from generator.read.files import read_text
from generator.read.merge_marks import merge_problem

FRONT = ("index", "README")
"""Either becomes the front page."""
_LARGEST = 50_000
"""Bytes of a page; the longest of the guide has a seventh."""
_LONGEST = 5_000
"""Signs without an empty line: a table of fifty rows. Markdown reads such a passage again for each
sign in it that may begin something, so that ten times the length takes a hundred times as long."""
_DEEPEST = 60
"""Brackets open at once, or lists inside one another."""
_BRACKETS = re.compile(r"\\.|[\[\]()>]|<(?=[A-Za-z!/?])")
_OPENED_BY = {"]": "[", ")": "(", ">": "<"}
_NESTED = re.compile(r" {0,3}(?:[-*+>][ \t]*|\d+[.)][ \t]+)*")
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
    text = read_text(root, path, _LARGEST)
    if isinstance(text, Problem):
        return text
    return merge_problem(path, text) or next(_endless(text, path), text)


def _endless(text: str, path: str) -> Iterator[Problem]:
    """Where a page would keep Markdown busy."""
    opened = dict.fromkeys(_OPENED_BY.values(), 0)
    length = 0
    for number, line in enumerate(text.splitlines(), 1):
        if not line.strip():
            opened, length = dict.fromkeys(opened, 0), 0
            continue
        length += len(line) + 1
        if length > _LONGEST:
            what = "this passage goes on for far too long without an empty line"
            yield Problem(Place(path, number), what, "part it with empty lines")
        if too_many := _left_open(line, opened):
            what = "far more brackets are opened here than closed"
            yield Problem(
                Place(path, number), what, f"close each `{too_many}`, or write `\\{too_many}`"
            )
        nested = _NESTED.match(line)
        if nested and nested.end() > 2 * _DEEPEST:
            what = "lists or quotes stand inside one another far too deep here"
            yield Problem(Place(path, number), what, "begin the line with fewer signs")


def _left_open(line: str, opened: dict[str, int]) -> str:
    """The bracket of which too many are open after a line, if any; those it opens and closes are counted."""
    for sign in _BRACKETS.findall(line):
        if sign in opened:
            opened[sign] += 1
            if opened[sign] > _DEEPEST:
                return str(sign)
        elif sign in _OPENED_BY:
            opened[_OPENED_BY[sign]] = max(0, opened[_OPENED_BY[sign]] - 1)
    return ""


def _title(root: Path, file: Path) -> str:
    """The first heading; the file's name where it has none or cannot be read, which is told elsewhere."""
    text = read_text(root, file.relative_to(root).as_posix())
    lines = [] if isinstance(text, Problem) else text.splitlines()
    for line in lines:
        if found := _HEADING.match(line):
            return line[found.end() :].strip().rstrip("#").rstrip()
    return file.stem.replace("-", " ").capitalize()
