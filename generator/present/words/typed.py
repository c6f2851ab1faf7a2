"""The ways a number may be typed, for a program that compares letters and knows no numbers."""

from __future__ import annotations

from decimal import Decimal

from generator.present.words.say import Say, digits


def typed(value: Decimal, say: Say, unit: str = "") -> tuple[str, ...]:
    """``1250``, ``1,250``, and each with its unit where it has one; the barest first.

    Args:
        value: the number.
        say: the words of the page, with its language's way to write numbers.
        unit: as it stands behind the number; empty for a bare one.
    """
    bare = dict.fromkeys((digits(value), say.number(value)))
    return (*bare, *(f"{one} {unit}" for one in bare if unit))
