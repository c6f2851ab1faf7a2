"""The lines of a caption file, each with its place."""

from __future__ import annotations

import re
from dataclasses import dataclass

from generator.problems import Place, Problem

_END = re.compile(r"\r\n|\n|\r")
"""The three line ends of WebVTT; ``str.splitlines`` knows more, which are only letters there."""


@dataclass(frozen=True, slots=True)
class Line:
    """One line, without its end."""

    path: str
    """Of its file."""
    number: int
    """Counted from 1."""
    text: str
    """Without what ends it."""

    def problem(self, column: int, what: str, hint: str) -> Problem:
        """A problem at a column counted from 0."""
        return Problem(Place(self.path, self.number, column + 1), what, hint)


def lines_of(path: str, text: str) -> tuple[Line, ...]:
    """All lines in order."""
    return tuple(Line(path, number, line) for number, line in enumerate(_END.split(text), 1))
