"""The names of stops, rows and foods of a day, by which the rest of the program and old links find them.

A name is given by the educator or made of what stands there, never of a number in an order, so that
it stays when others are moved, added or taken out. It is made once, in the lesson's own language.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from generator.model.names import InnerIds, slug
from generator.model.stops import Stop

# fmt: off
PAGE_IDS = frozenset({
    "adults", "first", "half", "hundred",
    "main", "on-paper", "one", "second", "ten", "tens", "tenth", "who",
    "parting", "parting-name",
})
# fmt: on
"""Ids that the pages of the theme use for themselves."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StopIds(InnerIds):
    """The names in one stop."""

    stop: str
    """Of the stop itself: its address on the page."""


def lesson_ids(stops: Sequence[Stop]) -> tuple[StopIds, ...]:
    """The names in every stop; two may be equal here, which reading refuses."""
    return tuple(map(stop_ids, stops))


def stop_ids(stop: Stop) -> StopIds:
    """The names in one stop."""
    inner = stop.inner_ids
    return StopIds(
        stop=stop.id or _made(stop), parts=inner.parts, foods=inner.foods, sides=inner.sides
    )


def _made(stop: Stop) -> str:
    """A name of a stop's own words; its kind comes first where they would make no good name."""
    name = slug(stop.called)
    return name if name[0].isalpha() and name not in PAGE_IDS else f"{slug(stop.kind)}-{name}"
