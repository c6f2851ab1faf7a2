"""One stop into its view, whatever its kind."""

from __future__ import annotations

from typing import assert_never

from markupsafe import Markup

from generator.model.moment import clock
from generator.model.stops import Stop
from generator.model.stops.ask import AskStop
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop
from generator.model.stops.talk import TalkStop
from generator.model.stops.watch import WatchStop
from generator.present.stops.compare import compare_view
from generator.present.stops.day import day_view
from generator.present.stops.head import Telling, head
from generator.present.stops.move import move_view
from generator.present.views.stop import StopView
from generator.present.views.stops import AskView, TalkView, WatchView
from generator.present.words.prose import inline


def stop_view(index: int, stop: Stop, telling: Telling) -> StopView:
    """The view of the stop at an index."""
    match stop:
        case WatchStop():
            return _watch(index, stop, telling)
        case AskStop():
            return _ask(index, stop, telling)
        case CompareStop():
            return compare_view(index, stop, telling)
        case MoveStop():
            return move_view(index, stop, telling)
        case DayStop():
            return day_view(index, stop, telling)
        case TalkStop():
            return _talk(index, stop, telling)
        case _:
            assert_never(stop)


def _watch(index: int, stop: WatchStop, telling: Telling) -> WatchView:
    says = telling.say("watch_from_to", start=clock(stop.start), end=clock(stop.end))
    return WatchView(
        head=head(index, stop, telling),
        until=clock(stop.end),
        says=says,
    )


def _ask(index: int, stop: AskStop, telling: Telling) -> AskView:
    hint = inline(stop.hint) if stop.hint else Markup("")
    return AskView(
        head=head(index, stop, telling),
        prompt=inline(stop.prompt),
        hint=hint,
        reveal=inline(stop.reveal),
    )


def _talk(index: int, stop: TalkStop, telling: Telling) -> TalkView:
    return TalkView(
        head=head(index, stop, telling),
        prompt=inline(stop.prompt),
        ideas=tuple(map(inline, stop.ideas)),
    )
