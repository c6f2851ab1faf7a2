"""What stands in braces in a text: the name of a number, or a number that is meant and is no figure."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Brace(Enum):
    """What stands in braces."""

    FIGURE = "the name of a number of the lesson"
    MEANT = "a number that is meant, and none of the lesson's"
    SIGN = "a brace that is meant as a brace"
    UNKNOWN = "none of these"


@dataclass(frozen=True, slots=True)
class Filled:
    """One place in braces, in the text as it is written and as it is shown."""

    brace: Brace
    """What it is."""
    inside: str
    """What stands between the braces."""
    written: tuple[int, int]
    """Where it begins and ends in the text as written, braces included."""
    shown: tuple[int, int]
    """Where it begins and ends in the text as shown."""


@dataclass(frozen=True, slots=True)
class Filling:
    """A text with braces, as written; what became of each."""

    written: str
    """As the educator wrote it."""
    places: tuple[Filled, ...]
    """In the order of the text."""

    def at(self, shown: int) -> int:
        """Where a letter of the shown text stands in the written one."""
        moved = 0
        for place in self.places:
            if shown < place.shown[0]:
                break
            if shown < place.shown[1]:
                return place.written[0]
            moved = place.written[1] - place.shown[1]
        return shown + moved
