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
from generator.present.views.components import ComponentsView
from generator.present.views.stop import StopView
from generator.present.words.amounts import blocks_view
from generator.present.words.families import HANGS

PATH = "components/index.html"
_NUMBERS = ("1420", "320", "7.5", "0")
"""Thousands, the lessons' usual size, a half, and nothing."""
_TILTS = {Lean.EATEN: STEEPEST, Lean.EVEN: 0, Lean.NEEDED: -STEEPEST}


def components_view(results: Iterable[LessonResult], surround: Surround) -> ComponentsView:
    """The components, in stops of the site's own lessons: one stop of each kind."""
    stops = tuple(_one_of_each(results, surround))
    look = Look(styles=("screen", "below", "work"))  # single rows stand there before any stop
    say, page = surround.say, surround.page(PATH, "components", look=look)
    placed = stops_on_page(stops, page, {}, film=False)
    return ComponentsView(
        page=replace(page, styles=page.styles + tuple(one for at in placed for one in at.styles)),
        stops=placed,
        video=None,
        screens=(),
        piles=tuple(blocks_view(Decimal(number), say) for number in _NUMBERS),
        tens=blocks_view(Decimal(320), say, opened=100),
        days=tuple(
            day for stop in stops if isinstance(stop, DayView) for day in _leaning(stop, surround)
        ),
    )


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
