"""How often a food fits in: our three words, none of them a judgement."""

from __future__ import annotations

from enum import StrEnum


class Frequency(StrEnum):
    """Shown as words and as three, two or one dots of one colour."""

    MOST_DAYS = "most days"
    SOME_DAYS = "some days"
    NOW_AND_THEN = "now and then"

    @property
    def dots(self) -> int:
        """Three for most days, two for some days, one for now and then."""
        return 3 - list(Frequency).index(self)
