"""The lessons in a table, for whoever chooses among them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class LessonRowView:
    """One lesson."""

    href: str
    title: Markup
    language: str
    """Tag of the lesson's language, where it is not the page's."""
    meta: str
    """``Grades 3–5 · 18 minutes``, and the language it is in where that is another."""
    cover: str
    """Path of its drawing; empty where it compares nothing."""
    topic: str
    """Measures it compares."""
    standards: tuple[str, ...]
    """Codes."""
    moves: Markup
    """Which moves it has, or that it has none."""
    allergens: str
    """Those of its foods; empty where it shows no food."""
    film: str
    """In which languages its film has captions, or that it has none."""
    also_in: str
    """Other languages the lesson is in, or empty."""
    links: tuple[LinkView, ...]
    """Notes, the view for a projector, the packet."""


@dataclass(frozen=True, slots=True)
class LessonTableView:
    """The page with all lessons of a language, for the screen and for paper."""

    template: ClassVar[str] = "lesson-table.html"
    page: PageView
    lessons: tuple[LessonRowView, ...]
    """Those of the page's language, then those that are there in the first language alone."""
    front: str
    """Address of the front page; empty where the site has none."""
    qr: Markup
    """QR code of that address, or nothing."""
