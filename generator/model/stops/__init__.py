"""The kinds of stop a lesson is made of, each in a file of its own."""

from __future__ import annotations

from generator.model.stops.ask import AskStop
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop
from generator.model.stops.talk import TalkStop
from generator.model.stops.watch import WatchStop

Stop = WatchStop | AskStop | CompareStop | MoveStop | DayStop | TalkStop

STOP_KINDS: dict[str, type[Stop]] = {
    "watch": WatchStop,
    "ask": AskStop,
    "compare": CompareStop,
    "move": MoveStop,
    "day": DayStop,
    "talk": TalkStop,
}
"""Every kind by the key that begins it in a lesson file."""
