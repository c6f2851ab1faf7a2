"""Every component in all its states, for a preview."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.stops.day import DayView
from generator.present.views.amounts import BlocksView
from generator.present.views.lesson import StopOnPage
from generator.present.views.page import LinkView, PageView
from generator.present.views.video import VideoView


@dataclass(frozen=True, slots=True)
class ComponentsView:
    """The page of all components in all states."""

    template: ClassVar[str] = "components.html"
    page: PageView
    stops: tuple[StopOnPage, ...]
    """One of each kind."""
    video: VideoView | None
    """None: no lesson's video is shown here."""
    screens: tuple[LinkView, ...]
    """Empty, for the same reason."""
    piles: tuple[BlocksView, ...]
    tens: BlocksView
    """A number with its hundreds taken apart."""
    days: tuple[DayView, ...]
    """One day leaning each way; none where no lesson has a day."""
