"""The front page, and pages written by hand."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class CoverView:
    """A lesson's gaps as plums, without their numbers."""

    picture: str
    narrow: str
    """The same, flatter, for narrow screens."""
    says: str
    """It in words."""


@dataclass(frozen=True, slots=True)
class LessonCardView:
    """A lesson in the list on the front page."""

    id: str
    """Its folder; what a learner did is kept on the device by it."""
    href: str
    title: str
    summary: Markup
    meta: str
    topic: str
    """Measures it compares."""
    grades: str
    """Every grade it is for, ``3 4 5``; kindergarten is 0."""
    minutes: int
    topics: str
    """Names of the topics, ``energy sodium``."""
    cover: CoverView | None
    """None where it compares nothing."""
    languages: str
    """Tags of the languages it is there in, ``en es``."""


@dataclass(frozen=True, slots=True)
class GroupView:
    """Lessons that compare the same thing."""

    title: str
    """What they compare; empty where so few lessons are there that they stand together."""
    lessons: tuple[LessonCardView, ...]


@dataclass(frozen=True, slots=True)
class FilterView:
    """Something to choose lessons by."""

    name: str
    """Also the name in the page's address."""
    label: str
    choices: tuple[tuple[str, str], ...]
    """Value and wording; the first chooses every lesson."""


@dataclass(frozen=True, slots=True)
class HomeView:
    """The front page."""

    template: ClassVar[str] = "home.html"
    page: PageView
    title: str
    """Empty where the introduction has a heading of its own."""
    intro: Markup
    filters: tuple[FilterView, ...]
    """None where few lessons are there: they are seen at once."""
    without: tuple[str, str]
    """Value and wording of what few lessons can leave out; both empty where nothing is left out."""
    groups: tuple[GroupView, ...]
    count: str
    """``5 lessons``"""
    updates: str
    """Path of the page that says what changed."""


@dataclass(frozen=True, slots=True)
class ListedView:
    """A lesson in the list of a hand-written page."""

    href: str
    title: str
    language: str
    """Tag of the title's language, where it is not the page's."""
    only_in: str
    """What that language is called; empty where the lesson is in the page's."""
    topic: str
    """Measures it compares."""
    arithmetic: str
    """What a child must be able to do."""


@dataclass(frozen=True, slots=True)
class LessonListView:
    """The list of lessons in a hand-written page."""

    template: ClassVar[str] = "parts/lesson-list.html"
    all: str
    """Where all lessons stand in a table with more to choose by."""
    lessons: tuple[ListedView, ...]


@dataclass(frozen=True, slots=True)
class ProseView:
    """A hand-written page."""

    template: ClassVar[str] = "prose.html"
    page: PageView
    title: str
    """Empty where the body has a heading of its own."""
    heading: Markup
    """What stands above its text: its own main heading, or nothing."""
    body: Markup
    contents: tuple[LinkView, ...]
    """Its parts; empty where it is short."""
    draft: bool
    """Whether only a preview shows it."""
    guide: LinkView | None
    """Back to the guide's first page, on its others."""
