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
    codes: int
    minutes: int
    """Where the step of minutes begins that half of the codes reach or pass."""


@dataclass(frozen=True, slots=True)
class StopDone:
    """How many codes of a lesson say that a stop is done."""

    key: LessonKey
    stop: str
    """Its id."""
    codes: int


@dataclass(frozen=True, slots=True)
class Twice:
    """A question that was asked before and after, by what was answered both times."""

    key: LessonKey
    question: str
    """Id of the stop that asks first."""
    stayed_right: int
    worse: int
    """From right to wrong."""
    better: int
    """From wrong to right."""
    stayed_wrong: int

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
class Same:
    """Codes of a lesson that are equal to another one of the same file."""

    key: LessonKey
    codes: int


@dataclass(frozen=True, slots=True)
class Alike:
    """Two files that look like one that was sent twice."""

    first: int
    """Place among the files that were read, counted from 0."""
    second: int
    codes: int
    """That both hold, in the same order."""


@dataclass(frozen=True, slots=True)
class Tally:
    """All that was counted."""

    reach: tuple[Reach, ...]
    stops: tuple[StopDone, ...]
    twice: tuple[Twice, ...]
    same: tuple[Same, ...]
    alike: tuple[Alike, ...]
