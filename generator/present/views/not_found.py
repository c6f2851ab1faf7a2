"""The page in the place of one that is not there."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class NotFoundInLanguageView:
    """What it says in one language."""

    language: str
    """Language tag."""
    direction: str
    """``ltr`` or ``rtl``."""
    title: str
    says: str
    front: LinkView
    """The front page of the language, which lists all lessons."""
    updates: LinkView
    """The page that says what changed."""
    stamps: LinkView
    """The page where the stamp of a sheet is typed."""
    moved: tuple[str, str]
    """What is said of a file of a lesson that has another name, and of the way to it."""
    lessons: tuple[LinkView, ...]
    """None where they are so many that the front page groups them."""


@dataclass(frozen=True, slots=True)
class NotFoundView:
    """The page, in every language of the site."""

    template: ClassVar[str] = "not-found.html"
    page: PageView
    languages: tuple[NotFoundInLanguageView, ...]
    """The site's first one first."""
    formerly: str
    """Path of the list of older names, which a script looks into; empty where no lesson had one."""
