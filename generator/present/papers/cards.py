"""Movement cards on paper: the cards of the page, their figures colored and said in words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from markupsafe import Markup

from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.paper import cards_view
from generator.present.pictures.figures.file import said_alone
from generator.present.views.move_card import LibraryMoveView
from generator.present.views.paper import CardOnSheet, CardsView
from generator.present.words.foreign import unmarked
from generator.present.words.say import Say


def cards_paper(told: PageInLesson) -> CardsView:
    """The view of the page, for what knows no style and reads pictures by their words."""
    view, say = cards_view(told), told.surround.say
    sheets = tuple(
        replace(sheet, cards=tuple(_card(one, say) for one in sheet.cards)) for sheet in view.sheets
    )
    return replace(view, sheets=sheets, more=())


def _card(one: CardOnSheet, say: Say) -> CardOnSheet:
    move = one.card.move
    drawn = replace(
        move,
        figures=_drawn(move.figures, "figure_says", move, say),
        seated_figures=_drawn(move.seated_figures, "figure_seated_says", move, say),
    )
    return replace(one, card=replace(one.card, move=drawn))


def _drawn(
    figures: Sequence[Markup], key: str, move: LibraryMoveView, say: Say
) -> tuple[Markup, ...]:
    number, of = say.number, say.number(len(figures))
    return tuple(
        said_alone(svg, say(key, move=unmarked(move.name), number=number(at), of=of))
        for at, svg in enumerate(figures, 1)
    )
