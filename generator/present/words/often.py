"""How often each food of a comparison fits in, in words and dots."""

from __future__ import annotations

from generator.compute.result import Holding
from generator.present.views.amounts import OftenView
from generator.present.words.amounts import food_name
from generator.present.words.say import Say


def often_views(holdings: tuple[Holding, ...], say: Say) -> tuple[OftenView, ...]:
    """One line for each food that has a word, in the order it first appears."""
    found: dict[str, OftenView] = {}
    for held in holdings:
        frequency = held.often.frequency if held.often else None
        if frequency is not None:
            name = food_name(held, say)
            words = say("often_" + frequency.replace(" ", "_"))
            found.setdefault(name, OftenView(name, words, frequency.dots))
    return tuple(found.values())
