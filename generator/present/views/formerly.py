"""The page at an address that something had before."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class FormerPlaceView:
    """A place on the page that it leads to."""

    id: str
    """By which an old link names it."""
    link: LinkView
    listed: bool
    """Whether it is shown to somebody who comes without naming a place."""


@dataclass(frozen=True, slots=True)
class FormerlyView:
    """The page: one sentence, and where to go."""

    template: ClassVar[str] = "formerly.html"
    page: PageView
    title: Markup
    says: str
    link: LinkView
    goes_on: bool
    """Whether a browser with scripts goes there by itself, and takes the place on the page along."""
    places: tuple[FormerPlaceView, ...]
    """What an old link may name there; without scripts the one that it does name is shown."""
    canonical: str
    """The whole address of the page it leads to, for search engines; empty while the site has none."""


@dataclass(frozen=True, slots=True)
class FramedFormerlyView(FormerlyView):
    """The same in the frame of another site: without the ways to the rest of this one."""

    template: ClassVar[str] = "formerly-framed.html"
