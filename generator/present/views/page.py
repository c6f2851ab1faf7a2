"""What stands around the content of every page."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class LinkView:
    """A link on the page."""

    href: str
    """Relative to the page, so that the site opens from a folder."""
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
    """What every page has around its content."""

    language: str
    title: str
    """For the title bar: the page and the programme."""
    description: str
    programme: str
    root: str
    """Relative address of the site's front page folder: empty or ``../`` so many times."""
    home: LinkView
    links: tuple[LinkView, ...]
    """Pages for everyone: teachers, sources, care and privacy."""
    languages: tuple[LanguageView, ...]
    """The same page in the other languages that have it."""
    stylesheet: str
    script: str
    policy: str
    """Content security policy, or empty in the preview."""
