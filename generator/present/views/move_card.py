"""A move with its count, on the page and on a card."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.present.views.number import Number


@dataclass(frozen=True, slots=True)
class LibraryMoveView:
    """A move as anyone can do it."""

    id: str
    """Id in the moves library."""
    name: str
    count_is: str
    """``One count is one knee up.``"""
    steps: tuple[str, ...]
    seated: str
    care: str
    room: str
    noise: str
    figures: tuple[Markup, ...]
    """Line figures of the move."""
    seated_figures: tuple[Markup, ...]
    pictures: tuple[str, ...]
    """Paths of the figures as files, for pages that should stay small."""
    seated_pictures: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class MoveCardView:
    """A move with its count."""

    move: LibraryMoveView
    count: Number
    """Whole counts."""
    left_over: str
    """``5``, without a unit; empty when nothing is."""
    pace: int
    """Counts a minute."""
    for_stop: str
    """Heading of the comparison; a card that is cut out names its stop and no food."""
    row: str
    """``Row 1``, for the lesson page, where the rows stand above."""
    division: str
    """``320 ÷ 10 = 32``"""
    asked_in: str
    """Address of the row whose gap or count the learner works out; empty where that is not asked."""
