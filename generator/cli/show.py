"""Problems in the terminal: the place, the line with a mark below it, and the way out."""

from __future__ import annotations

from pathlib import Path

from rich.cells import cell_len
from rich.console import Console
from rich.text import Text

from generator.problems import Place, Problem, Weight


def show(problems: tuple[Problem, ...], root: Path) -> None:
    """Each problem with its line of the file and a mark below the place."""
    console = Console(stderr=True, highlight=False, soft_wrap=True)
    for problem in problems:
        console.print(Text(f"{problem.place}: ", "bold"), Text(problem.what), sep="", end="\n")
        line, before = _line(root / problem.place.path, problem.place)
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


def _line(file: Path, place: Place) -> tuple[str, str]:
    """A line of a file and the part of it before a place; nothing where there is none."""
    try:
        line = file.read_text("utf-8-sig").splitlines()[place.line - 1].replace("\t", " ")
    except (OSError, UnicodeDecodeError, IndexError):
        return "", ""
    start = max(0, place.column - _WIDEST // 2) if len(line) > _WIDEST else 0
    return line[start : start + _WIDEST], line[start : place.column - 1]
