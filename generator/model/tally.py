"""What the codes of many teachers come to, counted and of nobody: the numbers a report is made of."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, order=True)
class LessonKey:
    """A lesson as it stood: with other numbers it is another one."""

    lesson: str
    """Its id."""
    numbers: str
    """The mark of its numbers."""


@dataclass(frozen=True, slots=True)
class Reach:
    """How many codes of a lesson there are."""

    key: LessonKey
    """Which lesson."""
    codes: int
    """How many there are."""
    minutes: int
    """Where the step of minutes begins that half of the codes reach or pass."""


@dataclass(frozen=True, slots=True)
class StopDone:
    """How many codes of a lesson say that a stop is done."""

    key: LessonKey
    """Of which lesson."""
    stop: str
    """Its id."""
    codes: int
    """How many say so."""


@dataclass(frozen=True, slots=True)
class Twice:
    """A question that was asked before and after, by what was answered both times."""

    key: LessonKey
    """Of which lesson."""
    question: str
    """Id of the stop that asks first."""
    stayed_right: int
    """Right both times."""
    worse: int
    """From right to wrong."""
    better: int
    """From wrong to right."""
    stayed_wrong: int
    """Wrong both times."""

    @property
    def pairs(self) -> int:
        """Codes with both answers."""
        return self.stayed_right + self.worse + self.better + self.stayed_wrong

    @property
    def right_before(self) -> int:
        """Of the codes with both answers."""
        return self.stayed_right + self.worse

    @property
    def right_after(self) -> int:
        """Of the codes with both answers."""
        return self.stayed_right + self.better


@dataclass(frozen=True, slots=True)
class RightAnswers:
    """How often an answer of a lesson was asked for, and right."""

    key: LessonKey
    """Of which lesson."""
    answer: str
    """Its id."""
    asked: int
    """Codes of learners who were asked for it: a class link may leave a stop out."""
    first: int
    """Codes that had it right at first."""
    later: int
    """Codes that had it right later, and not at first."""


@dataclass(frozen=True, slots=True)
class Same:
    """Codes of a lesson that are equal to another one of the same file."""

    key: LessonKey
    """Of which lesson."""
    codes: int
    """How many are equal to another."""


@dataclass(frozen=True, slots=True)
class Alike:
    """Two files that look like one that was sent twice."""

    first: int
    """Place among the files that were read, counted from 0."""
    second: int
    """The place of the other."""
    codes: int
    """That both hold, in the same order."""


@dataclass(frozen=True, slots=True)
class Tally:
    """All that was counted."""

    reach: tuple[Reach, ...]
    """One for each lesson."""
    stops: tuple[StopDone, ...]
    """One for each stop that a code names."""
    twice: tuple[Twice, ...]
    """One for each question that is asked twice."""
    right: tuple[RightAnswers, ...]
    """One for each answer that a code names."""
    same: tuple[Same, ...]
    """One for each lesson with equal codes."""
    alike: tuple[Alike, ...]
    """One for each two files."""
