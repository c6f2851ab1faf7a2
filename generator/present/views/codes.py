"""The page that reads finish codes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.page import PageView


@dataclass(frozen=True, slots=True)
class CodesOfView:
    """A lesson whose codes can be read."""

    title: Markup
    lesson: int
    """Mark of its id."""
    numbers: int
    """Mark of its numbers."""
    file: str
    """Path of what is fetched of it, from the site's root."""


@dataclass(frozen=True, slots=True)
class CodesView:
    """What the page begins with; the rest is made on the device."""

    template: ClassVar[str] = "codes.html"
    page: PageView
    lessons: tuple[CodesOfView, ...]
    """Those of the page's language, then those that are there in the first language alone."""
