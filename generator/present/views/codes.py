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
    lesson: str
    """Mark of its id, and of those it had before."""
    numbers: str
    """Mark of its numbers, and as it was while stops had other names."""
    file: str
    """Path of what is fetched of it, from the site's root."""


@dataclass(frozen=True, slots=True)
class CodesView:
    """What the page begins with; the rest is made on the device."""

    template: ClassVar[str] = "codes.html"
    page: PageView
    lessons: tuple[CodesOfView, ...]
    """Those of the page's language, then those that are there in the first language alone."""
