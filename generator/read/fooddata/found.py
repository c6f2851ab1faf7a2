"""The problems of one import: gathered up to a number that can still be read."""

from __future__ import annotations

from pathlib import Path

from generator.problems import LessonError, Place, Problem

MOST = 20
"""After so many, the download is broken as a whole and reading on helps nobody."""


class Found:
    """Collects what is wrong with one zip, and stops the import when it is too much."""

    def __init__(self, file: Path) -> None:
        self.file = file
        self.problems: list[Problem] = []

    def add(self, what: str, hint: str, member: str = "", line: int = 1) -> None:
        """Note a problem of the zip, or of a line of a file inside it.

        Raises:
            LessonError: when it is the twentieth.
        """
        path = f"{self.file.as_posix()}/{member}" if member else self.file.as_posix()
        self.problems.append(Problem(Place(path, line), what, hint))
        if len(self.problems) >= MOST:
            self.settle()

    def stop(self, what: str, hint: str, member: str = "", line: int = 1) -> LessonError:
        """The error to raise for a problem that nothing can be read after."""
        self.add(what, hint, member, line)
        return LessonError(self.problems)

    def settle(self) -> None:
        """Go on only when nothing is wrong.

        Raises:
            LessonError: with all that was found.
        """
        if self.problems:
            raise LessonError(self.problems)
