"""What stands around the content of every page."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar, Protocol


class View(Protocol):
    """What a template is filled with."""

    template: ClassVar[str]
    """Its path below the theme."""


@dataclass(frozen=True, slots=True)
class LinkView:
    """A link on the page."""

    href: str
    """Path from the site's root, or a place on the page, or another site; ``at.link`` makes it an address."""
    label: str
    here: bool = False
    """Whether it leads to the page it stands on."""


@dataclass(frozen=True, slots=True)
class LanguageView:
    """The same page in another language."""

    href: str
    label: str
    """Name of the language, in that language."""
    language: str
    """Language tag."""


@dataclass(frozen=True, slots=True)
class PageView:
    """What every page has around its content; files by their paths from the site's root."""

    language: str
    mirrored: bool
    """Whether its language is written from the right."""
    title: str
    """For the title bar: the page and the programme."""
    description: str
    programme: str
    home: LinkView
    links: tuple[LinkView, ...]
    """Pages for everyone: teachers, sources, care and privacy."""
    languages: tuple[LanguageView, ...]
    """The same page in the other languages that have it."""
    alternates: tuple[tuple[str, str], ...]
    """For search engines: language tag or ``x-default``, and where that page stands. Whole addresses, the
    page's own too, where the site has one; nothing where the page is in one language alone."""
    styles: tuple[str, ...]
    """Styles it begins with."""
    script: str
    searched: bool
    """Whether search engines may list it."""
    preview: bool
    """Whether it is for the educator's own machine; what is wrong may then follow at its end."""
    stamps: str
    """Path of the page that tells of a printed sheet whether it still holds."""
    still_right: str
    """Where to ask whether a printed sheet still holds; empty while the site has no address."""
    formerly: str = ""
    """Of a lesson's page: names that the lesson's folder had before, with spaces between them."""
