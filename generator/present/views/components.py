"""Every component in all its states, for a preview."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.stops.day import DayView
from generator.present.views.amounts import BlocksView
from generator.present.views.lesson import StopOnPage
from generator.present.views.move_card import MoveCardView
from generator.present.views.page import LinkView, PageView
from generator.present.views.video import VideoView


@dataclass(frozen=True, slots=True)
class KnotView:
    """A state of a stop on the thread."""

    label: str
    done: bool
    here: bool


@dataclass(frozen=True, slots=True)
class ShownStop:
    """A stop of one kind, under the name of its kind."""

    label: str
    place: StopOnPage


@dataclass(frozen=True, slots=True)
class ComponentsView:
    """The page of all components in all states."""

    template: ClassVar[str] = "components.html"
    page: PageView
    contents: tuple[LinkView, ...]
    """Its parts."""
    later: str
    """The script of elements that a lesson brings once it is shown."""
    knots: tuple[KnotView, ...]
    stops: tuple[ShownStop, ...]
    """One of each kind."""
    cards: tuple[MoveCardView, ...]
    """A move whose count is covered, and one whose count is shown; none where no lesson has a move."""
    video: VideoView | None
    """None: no lesson's video is shown here."""
    screens: tuple[LinkView, ...]
    """Empty, for the same reason."""
    piles: tuple[BlocksView, ...]
    tens: BlocksView
    """A number with its hundreds taken apart."""
    days: tuple[DayView, ...]
    """One day leaning each way; none where no lesson has a day."""
