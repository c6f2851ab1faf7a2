"""The element that makes class links."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.page import LinkView


@dataclass(frozen=True, slots=True)
class InLanguageView:
    """A lesson's page in one language."""

    language: str
    """Its tag."""
    label: str
    """What the language calls itself."""
    href: str
    address: str
    """Where it is published; empty while the site has no address."""


@dataclass(frozen=True, slots=True)
class LinkableView:
    """A lesson that links can be made to."""

    id: str
    title: Markup | str
    languages: tuple[InLanguageView, ...]
    """That of the page first, where the lesson has it."""
    file: str
    """Path of what is fetched of it where its stops do not stand here."""
    stops: tuple[tuple[str, str], ...]
    """Id and heading of each, in order; none where they are fetched."""


@dataclass(frozen=True, slots=True)
class ClassLinkView:
    """Everything that can be chosen."""

    template: ClassVar[str] = "parts/class-link.html"
    lessons: tuple[LinkableView, ...]
    """One on its own notes; where there are more, the lesson is chosen first."""
    sizes: tuple[tuple[int, str], ...]
    """How large the numbers of practice are: ``up to 1,000``."""
    ready: LinkView | None
    """A link that nobody needs a script to make; none where a lesson has to be chosen."""
    script: str
    library: str
    """The script that draws QR codes."""
