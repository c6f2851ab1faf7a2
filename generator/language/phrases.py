"""How a language says what is true of two numbers."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Phrases:
    """What a phrase that does hold is made of."""

    same: str
    alike: str
    more: str
    less: str
    about: str
    almost: str
    over: str
    under: str
    times: tuple[str, ...]
    """From 2 to 10 times."""
    parts: tuple[str, ...]
    """From a half to a tenth."""
    drawn_together: tuple[str, str] = ("", "")
    """Two words that are written as one, and how: ``de el ``, ``del ``."""
