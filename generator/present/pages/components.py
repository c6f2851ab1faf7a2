"""Every component in all its states on one page, for whoever changes them; made in the preview only."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from decimal import Decimal

from generator.compute.day import Lean
from generator.compute.result import LessonResult
from generator.present.pages.lesson_page import stop_views, stops_on_page
from generator.present.pages.page import Look, Surround
from generator.present.pictures.plumb_line import STEEPEST
from generator.present.stops.day import DayView
from generator.present.stops.move import MoveView
from generator.present.views.components import ComponentsView, KnotView, ShownStop
from generator.present.views.move_card import MoveCardView
from generator.present.views.page import LinkView
from generator.present.views.stop import StopView
from generator.present.words.amounts import blocks_view
from generator.present.words.families import HANGS, STOP
from generator.present.words.say import Say

PATH = "components/index.html"
_NUMBERS = ("1420", "320", "7.5", "0")
"""Thousands, the lessons' usual size, a half, and nothing."""
_TILTS = {Lean.EATEN: STEEPEST, Lean.EVEN: 0, Lean.NEEDED: -STEEPEST}


def components_view(results: Iterable[LessonResult], surround: Surround) -> ComponentsView:
    """The components, in stops of the site's own lessons: one stop of each kind."""
    stops = tuple(_one_of_each(results, surround))
    look = Look(
        styles=("screen", "below", "components", "work")
    )  # single rows stand there before any stop
    say, page = surround.say, surround.page(PATH, surround.say("components_title"), look=look)
    placed = stops_on_page(stops, page, {}, film=False)
    shown = tuple(ShownStop(say(STOP.key(at.stop.head.kind)), at) for at in placed)
    days = tuple(
        day for stop in stops if isinstance(stop, DayView) for day in _leaning(stop, surround)
    )
    cards = tuple(
        card for stop in stops if isinstance(stop, MoveView) for card in _covered_and_shown(stop)
    )
    return ComponentsView(
        page=replace(page, styles=page.styles + tuple(one for at in placed for one in at.styles)),
        contents=tuple(_parts(shown, say, days=bool(days), cards=bool(cards))),
        later=f"assets/later-{say.locale}.js",
        knots=_knots(say),
        stops=shown,
        cards=cards,
        video=None,
        screens=(),
        piles=tuple(blocks_view(Decimal(number), say) for number in _NUMBERS),
        tens=blocks_view(Decimal(320), say, opened=100),
        days=days,
    )


def _parts(shown: Iterable[ShownStop], say: Say, *, days: bool, cards: bool) -> Iterator[LinkView]:
    """A link to each part of the page, in their order."""
    every = (
        ("thread", say("component_thread"), True),
        ("controls", say("component_buttons"), True),
        ("entries", say("component_entries"), True),
        ("found", say("component_found"), True),
        ("cards", say("component_cards"), cards),
        ("details", say("component_details"), True),
        ("blocks", say("component_blocks"), True),
        ("plumb-line", say("component_plumb_line"), days),
        ("words-on", say("component_language"), True),
    )
    yield from (LinkView(f"#{name}", words) for name, words, there in every if there)
    yield from (LinkView(f"#{one.place.stop.head.id}", one.label) for one in shown)


def _knots(say: Say) -> tuple[KnotView, ...]:
    return (
        KnotView(say("state_done"), done=True, here=False),
        KnotView(say("state_here"), done=False, here=True),
        KnotView(say("state_done_here"), done=True, here=True),
        KnotView(say("state_to_come"), done=False, here=False),
    )


def _covered_and_shown(stop: MoveView) -> Iterator[MoveCardView]:
    """The first move: as a row asks for it until it is found, and afterwards."""
    for card in stop.cards[:1]:
        yield replace(card, asked_in=card.asked_in or stop.head.id)
        yield replace(card, asked_in="")


def _one_of_each(results: Iterable[LessonResult], surround: Surround) -> Iterator[StopView]:
    seen: set[str] = set()
    for result in results:
        for stop in stop_views(result, surround):
            if stop.head.kind not in seen and stop.head.id not in seen:
                seen |= {stop.head.kind, stop.head.id}
                yield stop


def _leaning(day: DayView, surround: Surround) -> Iterator[DayView]:
    for lean, tilt in _TILTS.items():
        hangs = surround.say(HANGS.key(lean))
        yield replace(day, lean=lean.value, tilt=str(tilt), hangs=hangs)
