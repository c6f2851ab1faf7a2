"""Every component in all its states, for a preview."""

from __future__ import annotations

from dataclasses import dataclass

from generator.present.views.amounts import BlocksView
from generator.present.views.page import PageView
from generator.present.views.stop import StopView
from generator.present.views.stops import DayView


@dataclass(frozen=True, slots=True)
class ComponentsView:
    """The page of all components in all states."""

    page: PageView
    stops: tuple[StopView, ...]
    """One of each kind."""
    piles: tuple[BlocksView, ...]
    tens: BlocksView
    """A number with its hundreds taken apart."""
    days: tuple[DayView, ...]
    """One day leaning each way; none where no lesson has a day."""
