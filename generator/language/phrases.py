"""How a language says what is true of two numbers."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Phrases:
    """What a phrase that does hold is made of."""

    same: str
    """Of two equal numbers."""
    alike: str
    """Of two numbers that are near each other."""
    more: str
    """Where the first is the larger."""
    less: str
    """Where the first is the smaller."""
    about: str
    """Before a number that is near, on either side."""
    almost: str
    """Before a number that is not quite reached."""
    over: str
    """Before a number that is passed."""
    under: str
    """Before a number that is not reached."""
    times: tuple[str, ...]
    """From 2 to 10 times."""
    parts: tuple[str, ...]
    """From a half to a tenth."""
    drawn_together: tuple[str, str] = ("", "")
    """Two words that are written as one, and how: ``de el ``, ``del ``."""
