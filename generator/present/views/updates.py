"""The page that says what each publication changed."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.updates.line import Line
from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class LessonUpdateView:
    """One lesson, or several of which the same is said."""

    heading: str
    """Title of the lesson, or how many there are."""
    href: str
    """Path of its page from the site's root; empty where there is none, or several are told."""
    lessons: tuple[LinkView, ...]
    """The several, by their titles; none where they are all that there are."""
    lines: tuple[Line, ...]


@dataclass(frozen=True, slots=True)
class UpdateView:
    """One publication."""

    id: str
    """Its place on the page, for links to it."""
    at: str
    """As ``2026-03-14T17:03:00Z``."""
    day: str
    """Such as ``March 14, 2026``."""
    time: str
    """Such as ``17:03 UTC``."""
    changed_at: str
    """When what is said here last changed, as ``at``: it may have been taken back later."""
    address: str
    """Of the site then; empty where it had none."""
    notes: tuple[str, ...]
    """What the educator said of it."""
    lines: tuple[Line, ...]
    """Of the site itself."""
    lessons: tuple[LessonUpdateView, ...]


@dataclass(frozen=True, slots=True)
class UpdatesView:
    """The newest publications, or older ones."""

    template: ClassVar[str] = "updates.html"
    page: PageView
    title: str
    newest: bool
    """Whether it is the page with the newest ones."""
    feed: str
    """Path of its feed from the site's root; empty where the site has no address."""
    feed_title: str
    days: tuple[tuple[str, tuple[UpdateView, ...]], ...]
    """Each day in words with its publications, the newest first."""
    others: tuple[LinkView, ...]
    """Pages with older ones, the newest first, or the way back to the newest."""
    note_language: str
    """Tag of the language that the educator's notes are in, where it is not the page's; else empty."""
