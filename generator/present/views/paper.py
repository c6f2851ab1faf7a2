"""Pages made for paper."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.asked import PartingView
from generator.present.views.move_card import LibraryMoveView, MoveCardView
from generator.present.views.notes import AnswerView
from generator.present.views.page import LinkView, PageView
from generator.present.views.practice import PracticeView
from generator.present.views.stop import StopView


@dataclass(frozen=True, slots=True)
class CardOnSheet:
    """A card with the way back to its stop."""

    card: MoveCardView
    qr: Markup
    """SVG of the address of its stop; empty while the site has none."""


@dataclass(frozen=True, slots=True)
class CardSheetView:
    """One sheet of up to four cards."""

    cards: tuple[CardOnSheet, ...]
    number: int


@dataclass(frozen=True, slots=True)
class CardsView:
    """The movement cards of a lesson."""

    template: ClassVar[str] = "cards.html"
    page: PageView
    title: str
    back: LinkView
    a_sheet: int
    """How many cards a sheet is parted into, the same on all sheets: four quarters, or up to three bands."""
    sheets: tuple[CardSheetView, ...]
    before: tuple[str, ...]
    """Room check and stop signs, before anyone moves."""
    more: tuple[LibraryMoveView, ...]
    """What is dealt on a screen along with few cards; nothing of it is printed."""


@dataclass(frozen=True, slots=True)
class StopOnSheet:
    """A stop on the worksheet."""

    stop: StopView
    whole: bool
    """Whether it is never torn over two sheets."""
    likely: tuple[AnswerView, ...]
    """Answers with the wrong ones that are likeliest; on the key alone."""


@dataclass(frozen=True, slots=True)
class SheetView:
    """The worksheet, or the answer key: the same problems, with answers or with room for them."""

    template: ClassVar[str] = "sheet.html"
    page: PageView
    title: str
    meta: str
    back: LinkView
    plums: Markup
    """Its gaps as plums, without numbers; empty where it compares nothing."""
    answers: bool
    """Whether the answers are printed."""
    stops: tuple[StopOnSheet, ...]
    """In the order of the lesson; what is only watched is left out."""
    parting: PartingView | None
    """One last question."""
    practice: tuple[PracticeView, ...]
    frames: tuple[str, ...]
    """Sentences with gaps to fill; on the worksheet alone."""
    qr: Markup
    """SVG of the lesson's address; empty while the site has none."""
    address: str
    typed: str
    """The address as it is typed: without what every browser adds by itself."""
