"""What was published: what a lesson said in one language at one time, and each time the site went out."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from decimal import Decimal

from generator.model.figure import FigureKind

PUBLISHED = "site_data/published"
"""Folder of the record, below the root of a site; written by publishing alone, never by hand."""
SITE_RECORD = f"{PUBLISHED}/site.jsonl"
"""A line for each publication."""


def lesson_record(lesson: str) -> str:
    """The file with what was published of a lesson, by its id.

    >>> lesson_record("soup")
    'site_data/published/lessons/soup.jsonl'
    """
    return f"{PUBLISHED}/lessons/{lesson}.jsonl"


@dataclass(frozen=True, slots=True)
class PublishedNumber:
    """One number of a lesson as it was published."""

    value: Decimal
    """As it was shown, in ``unit``."""
    unit: str
    """As the ledger has it: ``kcal``, ``times``."""
    kind: FigureKind
    of: str
    """What it is of, in the lesson's language: a food and its amount, a row, both sides."""


@dataclass(frozen=True, slots=True)
class LessonState:
    """What a lesson said in one language at one time."""

    at: str
    """When it was published, as ``2026-11-26T17:03:00Z``; empty for what is not published yet."""
    language: str
    """Tag of the language it says it in."""
    title: str = ""
    """As a page without Markdown has it."""
    numbers: Mapping[str, PublishedNumber] = field(default_factory=dict)
    """By their ids in the ledger, in its order."""
    stamps: Mapping[str, str] = field(default_factory=dict)
    """By sheet: ``worksheet``, ``answers``, ``cards``, ``practice``, ``notes``, ``family``; pages that can be
    printed too: ``lesson``, ``projector``."""
    stops: Mapping[str, str] = field(default_factory=dict)
    """Heading of every stop by its id, in the order of the page."""
    formerly: Mapping[str, str] = field(default_factory=dict)
    """By an id that a stop had before, its id now."""
    times: Mapping[str, str] = field(default_factory=dict)
    """By stop: its moments in the video, ``1:10`` or ``0:00-0:40``."""
    pages: tuple[str, ...] = ()
    """Names of its files below its address: ``cards.html``, ``papers/worksheet-a4.pdf``."""
    texts: str = ""
    """All its texts as one short mark."""
    gone: bool = False
    """Whether it went out no more from then on; nothing else is known of it then."""

    def says_as(self, other: LessonState) -> bool:
        """Whether both say the same, whenever they did."""
        return replace(self, at="") == replace(other, at="")


@dataclass(frozen=True, slots=True)
class Publication:
    """One time the site went out."""

    at: str
    """As ``2026-11-26T17:03:00Z``; no two have the same."""
    program: str
    """Version of the program it was made with."""
    address: str
    """Of the site; empty where it had none."""
    languages: tuple[str, ...]
    """The one that lessons are written in first."""
    lessons: tuple[str, ...]
    """Ids, in the order of their folders."""
    pages: tuple[str, ...] = ()
    """Paths of the pages that are no lesson's."""
    to: str = "git"
    """Where it went: ``git``, ``folder`` or ``server``."""
    note: str = ""
    """What the educator said of it."""
    undoes: str = ""
    """``at`` of the publication that it takes back, where it is such a one."""


@dataclass(frozen=True, slots=True)
class Published:
    """The record of publications."""

    lessons: Mapping[str, tuple[LessonState, ...]] = field(default_factory=dict)
    """By id of a lesson, all its states in all languages, the oldest first."""
    publications: tuple[Publication, ...] = ()
    """The oldest first."""

    def last(self, lesson: str, language: str) -> LessonState | None:
        """What a lesson said when it last went out, or that it did no more; nothing where it never did."""
        return last_of(self.lessons.get(lesson, ()), language)


def last_of(states: tuple[LessonState, ...], language: str) -> LessonState | None:
    """The last of a lesson's states in a language; nothing where it has none."""
    return next((one for one in reversed(states) if one.language == language), None)


NOTHING_PUBLISHED = Published()
"""The record of a site that never went out."""
