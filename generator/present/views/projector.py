"""A lesson for a projector: one stop a screen, for a whole class to see."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.views.asked import PartingView
from generator.present.views.lesson import StopOnPage
from generator.present.views.page import LinkView, PageView
from generator.present.views.video import VideoView


@dataclass(frozen=True, slots=True)
class StretchView:
    """What of the film leads to a stop."""

    start: float
    """Seconds."""
    says: str
    """``Play the video, 0:41 to 0:54``"""


@dataclass(frozen=True, slots=True)
class ScreenView:
    """A stop on its screen."""

    place: StopOnPage
    """As the lesson's page shows it, but for the player, which stands once for all."""
    stretch: StretchView | None
    """None where the site has no film of its own, or the stop no time in it."""
    cover: str
    """Path of the lesson's drawing, where there is nothing to do but watch; else empty."""


@dataclass(frozen=True, slots=True)
class ProjectorView:
    """The page for a projector."""

    template: ClassVar[str] = "projector.html"
    page: PageView
    title: str
    video: VideoView | None
    screens: tuple[LinkView, ...]
    """What is said in the video, in writing."""
    stops: tuple[ScreenView, ...]
    shapes: frozenset[str]
    """Names of the base-ten blocks that they draw."""
    parting: PartingView | None
    """One last question, after the stops."""
    with_numbers: bool
    """Whether there is anything that *Blocks only* leaves out."""
    care: tuple[str, ...]
    ways: tuple[LinkView, ...]
    """The lesson and its teaching notes."""
    timer: tuple[tuple[int, str], ...]
    """Minutes it can be set to, and how they are said."""
