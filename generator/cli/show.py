"""Problems in the terminal: the place, the line with a mark below it, and the way out."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from unicodedata import normalize

from rich.cells import cell_len
from rich.console import Console
from rich.text import Text

from generator.problems import Place, Problem, Weight, shortened


def show(problems: tuple[Problem, ...], root: Path) -> None:
    """Each problem with its line of the file and a mark below the place."""
    console = Console(stderr=True, highlight=False, soft_wrap=True)
    read = cache(lambda path: _lines(root / path))
    for problem in shortened(problems):
        console.print(Text(f"{problem.place}: ", "bold"), Text(problem.what), sep="", end="\n")
        line, before = _line(read(problem.place.path), problem.place)
        if line.strip():
            number = f"{problem.place.line:>5} | "
            console.print(Text(number + line, "dim"))
            console.print(Text(" " * (len(number) + cell_len(before)) + "^", "magenta"))
        if problem.hint:
            console.print(Text(f"        {problem.hint}"))
    must = sum(problem.weight is Weight.MUST for problem in problems)
    if must:
        console.print(f"{must} thing{'s' if must != 1 else ''} to put right. Nothing was written.")


_WIDEST = 160
"""Signs of a line that are shown; of a longer one, those around the place."""


_LARGEST = 5_000_000
"""Bytes of a file that is opened for its lines."""


def _lines(file: Path) -> list[str]:
    """The lines of a file as they were read; none of a file that is a link, or no text of an educator's."""
    try:
        if file.is_symlink() or file.stat().st_size > _LARGEST:
            return []
        return normalize("NFC", file.read_text("utf-8-sig")).splitlines()
    except (OSError, UnicodeDecodeError):
        return []


def _line(lines: list[str], place: Place) -> tuple[str, str]:
    """A line of a file and the part of it before a place; nothing where there is none."""
    if place.line > len(lines):
        return "", ""
    line = lines[place.line - 1].replace("\t", " ")
    start = max(0, place.column - _WIDEST // 2) if len(line) > _WIDEST else 0
    return line[start : start + _WIDEST], line[start : place.column - 1]
