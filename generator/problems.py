"""What can be wrong with an educator's files, and how it is told.

The error tree, all of it::

    LessonError            one or more problems; nothing was written
      (carries)  Problem   one mistake: where, what, and a way out
        (carries)  Place   a file, a line and a column, counted from 1

Anything else that is raised is a bug of ours and keeps its traceback.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum


class Weight(StrEnum):
    """How much a problem matters."""

    MUST = "must"
    """The site cannot be built with it."""
    QUESTION = "question"
    """The site is built; the educator should look at it."""
    DRAFT = "draft"
    """Of a lesson that is a draft: it stops nothing, and is looked at before the lesson is published."""


@dataclass(frozen=True, order=True, slots=True)
class Place:
    """A spot in a file the educator wrote."""

    path: str
    """Relative to the project's root, with forward slashes."""
    line: int = 1
    """Counted from 1."""
    column: int = 1
    """Counted from 1."""

    def __str__(self) -> str:
        return f"{self.path}:{self.line}:{self.column}"


@dataclass(frozen=True, slots=True)
class Problem:
    """One mistake, in plain words, with its place and a way out."""

    place: Place
    what: str
    """What is wrong: a sentence without a full stop."""
    hint: str = ""
    """What to do about it: a sentence without a full stop, or nothing."""
    weight: Weight = Weight.MUST

    def __str__(self) -> str:
        return f"{self.place}: {self.what}" + (f": {self.hint}" if self.hint else "")


MOST_A_FILE = 50
"""Problems of one file that are told; more of them have one cause, and nobody reads them."""


def shortened(problems: Iterable[Problem]) -> tuple[Problem, ...]:
    """The problems in their order, of each file no more than ``MOST_A_FILE`` and a word on the rest."""
    listed = tuple(problems)
    counts = Counter(problem.place.path for problem in listed)
    seen: Counter[str] = Counter()
    told: list[Problem] = []
    for problem in listed:
        path = problem.place.path
        seen[path] += 1
        rest = counts[path] - MOST_A_FILE
        if rest <= 0 or seen[path] <= MOST_A_FILE:
            told.append(problem)
        elif seen[path] == MOST_A_FILE + 1:
            what = f"and {rest} more in this file"
            told.append(Problem(problem.place, what, "begin with those above", problem.weight))
    return tuple(told)


class LessonError(Exception):
    """Carries every problem found in one run.

    Raised only when at least one problem has ``Weight.MUST``.
    """

    def __init__(self, problems: Iterable[Problem]) -> None:
        self.problems = tuple(sorted(problems, key=lambda problem: problem.place))
        super().__init__("\n".join(map(str, shortened(self.problems))))
