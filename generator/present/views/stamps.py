"""The pages that tell of a print stamp whether its sheet still holds."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class SheetNowView:
    """A sheet as the lesson prints it today."""

    title: str
    stamp: str
    href: str
    """Its page, to print it anew; empty where it is a file alone."""


@dataclass(frozen=True, slots=True)
class PastSheetView:
    """A sheet that was printed before and holds no more."""

    title: str
    stamp: str
    says: str
    """When it went out, and until when it was right."""
    changes: tuple[str, ...]
    """Which numbers are others now; nothing where only words are."""


@dataclass(frozen=True, slots=True)
class SheetsView:
    """The sheets of one lesson, of today and of before."""

    template: ClassVar[str] = "sheets.html"
    page: PageView
    title: str
    back: LinkView
    stamps: str
    """Path of the page where any stamp of the site is typed."""
    now: tuple[SheetNowView, ...]
    past: tuple[PastSheetView, ...]
    """The newest first."""


@dataclass(frozen=True, slots=True)
class SheetsOfView:
    """A lesson whose sheets can be looked up."""

    title: Markup
    lesson: str
    """Its id."""
    href: str
    """The page of its sheets."""


@dataclass(frozen=True, slots=True)
class StampsView:
    """The page where a stamp is typed; what is known of it is fetched."""

    template: ClassVar[str] = "stamps.html"
    page: PageView
    signs: int
    """By how many first signs of a stamp the files are parted that are fetched."""
    folders: str
    """As JSON: by language, the folder of its pages."""
    lessons: tuple[SheetsOfView, ...]
    """Those of the page's language, then those that are there in the first language alone."""
