"""The page of a lesson that other sites show inside of theirs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.views.asked import PartingView
from generator.present.views.lesson import StopOnPage
from generator.present.views.page import LinkView, PageView
from generator.present.views.video import VideoView


@dataclass(frozen=True, slots=True)
class EmbedView:
    """All stops of a lesson; an address with the name of one shows that one alone."""

    template: ClassVar[str] = "embed.html"
    page: PageView
    id: str
    title: str
    stops: tuple[StopOnPage, ...]
    shapes: frozenset[str]
    """Names of the base-ten blocks that they draw."""
    parting: PartingView | None
    lesson: LinkView
    """The whole lesson, and whose it is."""
    video: VideoView | None = None
    """None: no film is loaded here."""
    screens: tuple[LinkView, ...] = ()
    """None either: what a player leads to."""


@dataclass(frozen=True, slots=True)
class SnippetView:
    """What a teacher copies into a page of a class site to show one stop there."""

    heading: str
    """Of the stop."""
    html: str
    """The element, to be copied."""
