"""What a cartridge holds: things, and the order a class finds them in."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from generator.present.views.question import QuestionView


class Kind(Enum):
    """What a thing is."""

    LINK = "link"
    """A page of the site."""
    PAPER = "paper"
    """A file to print, which comes along."""
    QUIZ = "quiz"
    """Questions that are given together."""


@dataclass(frozen=True, slots=True)
class Asked:
    """A question in its place."""

    id: str
    """The same in every build: of the lesson and of what is asked."""
    question: QuestionView
    address: str
    """Of the stop that asks it."""


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing in a cartridge; or, with things inside, a folder of them."""

    id: str
    """The same in every build and every version: what is taken in twice is brought up to date."""
    title: str
    kind: Kind | None = None
    """Nothing for a folder."""
    at: str = ""
    """Address of a link, path on the site of a paper."""
    teacher: bool = False
    """Whether it is for the teacher, as the standard says it; who takes it in may show it to all the same."""
    inside: tuple[Thing, ...] = ()
    questions: tuple[Asked, ...] = ()
    """Of a quiz."""

    def every(self) -> tuple[Thing, ...]:
        """Itself and all things inside, in order, no folder among them."""
        within = tuple(one for thing in self.inside for one in thing.every())
        return within if self.kind is None else (self, *within)


@dataclass(frozen=True, slots=True)
class Cartridge:
    """A cartridge before it is written down as one version or the other."""

    id: str
    title: str
    about: str
    """What it is, in a sentence or two."""
    language: str
    """Language tag."""
    level: str
    """``Grades 3–5``; empty where it holds several lessons."""
    standards: tuple[tuple[str, str], ...]
    """Code and paraphrase."""
    license: str
    """Address of the licence; empty where none is given."""
    bank: str
    """Id of the questions to choose from."""
    things: tuple[Thing, ...]
    """A folder for each lesson."""

    def every(self) -> tuple[Thing, ...]:
        """All things, in order."""
        return tuple(one for thing in self.things for one in thing.every())

    @property
    def questions(self) -> tuple[Asked, ...]:
        """Of all its quizzes."""
        return tuple(one for thing in self.every() for one in thing.questions)
