"""What the report shows, on its page and on paper alike: neither makes a figure of its own."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar


@dataclass(frozen=True, slots=True)
class BarView:
    """A bar, in hundredths of the longest one there can be."""

    long: str
    low: str = ""
    """Where its interval begins; empty where it has none."""
    high: str = ""


@dataclass(frozen=True, slots=True)
class ShareView:
    """Some of a number."""

    name: str
    known: bool
    """Whether the site knows what it is called; else the name is an id."""
    told: str
    """``23 of 60``, or that it is hidden."""
    percent: str
    """With its interval; empty where the count is hidden."""
    bar: BarView | None
    """Nothing where the count is hidden."""


@dataclass(frozen=True, slots=True)
class ReachView:
    """A lesson in the first table."""

    title: str
    known: bool
    told: str
    """How many codes, or that this is hidden."""
    minutes: str
    bar: BarView | None
    codes: int | None


@dataclass(frozen=True, slots=True)
class QuestionView:
    """A question that was asked before and after."""

    name: str
    known: bool
    asks: str
    """Its words; empty where the site does not know them."""
    pairs: str
    shares: tuple[ShareView, ...]
    """Right before, right after; nothing where the pairs are few."""
    changes: tuple[tuple[str, str], ...]
    """What was answered both times, and how many did; nothing where one of them is small."""
    says: tuple[str, ...]
    """What the test says."""


@dataclass(frozen=True, slots=True)
class AnswerView:
    """An answer of a lesson, of all its codes."""

    first: ShareView
    """Right at first, with the name of the answer."""
    last: str
    """Right at last: how many and how many percent, or that it is hidden."""


@dataclass(frozen=True, slots=True)
class LessonView:
    """A lesson whose codes are shown."""

    title: str
    known: bool
    stops: tuple[ShareView, ...]
    answers: tuple[AnswerView, ...]
    says: str
    """Whether more than half did not have some of them at first, as far as that is shown; empty without answers."""
    missed: tuple[str, ...]
    """Their names, fewest first."""
    questions: tuple[QuestionView, ...]


@dataclass(frozen=True, slots=True)
class ReportView:
    """The whole report."""

    template: ClassVar[str] = "report/page.html"
    language: str
    title: str
    programme: str
    summary: tuple[str, ...]
    """What was counted, and what is hidden."""
    lessons: tuple[ReachView, ...]
    details: tuple[LessonView, ...]
    cautions: tuple[str, ...]
    """What a code is not, and how to read the figures."""
