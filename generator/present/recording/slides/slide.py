"""One slide: when it is shown, where it hangs on the thread, and what stands on it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal

from markupsafe import Markup

from generator.model.moment import clock
from generator.present.views.amounts import BlocksView


@dataclass(frozen=True, slots=True)
class Line:
    """A title and the sentence to remember."""

    title: str
    line: str
    """The last sentence of what is said meanwhile, or empty."""


@dataclass(frozen=True, slots=True)
class Question:
    """A prompt, large."""

    heading: str
    prompt: str


@dataclass(frozen=True, slots=True)
class Held:
    """One food of a row."""

    side: str
    """Name of the side."""
    food: str
    amount: str
    """``1 medium``, or empty."""
    value: str
    """As shown on the page, without its unit."""
    unit: str
    blocks: BlocksView


@dataclass(frozen=True, slots=True)
class RowOfTwo:
    """Two foods with their shown values, and the question."""

    heading: str
    first: Held
    second: Held
    question: str
    shows: tuple[str, ...]
    """Ids of the numbers that stand on it."""


@dataclass(frozen=True, slots=True)
class BothNumbers:
    """What a day gave and took, each on its side of the plumb line."""

    heading: str
    gave_says: str
    gave: str
    """With its unit."""
    took_says: str
    took: str
    working: str
    """``2,430 − 1,880 = 550`` where it is shown how, or empty."""
    tilt: str
    """Degrees clockwise of the plumb line, or empty where nobody knows yet."""
    lean: str
    """Which way it leans."""
    hangs: str
    """What the picture shows, in a sentence."""
    shows: tuple[str, ...]
    """Ids of the numbers that stand on it."""


@dataclass(frozen=True, slots=True)
class Before:
    """The room check, before anyone moves."""

    heading: str
    checks: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class MoveCount:
    """A move and how many times."""

    heading: str
    name: str
    count: str
    """Whole number, formatted."""
    count_is: str
    left_over: str
    """``5 left over``, or empty."""
    team: str
    """That the count belongs to everybody, and why nobody moves for food."""
    figures: tuple[Markup, ...]
    """SVG of the two poses."""
    shows: tuple[str, ...]
    """Ids of the numbers that stand on it."""


@dataclass(frozen=True, slots=True)
class Pause:
    """Pause here, your turn."""

    heading: str
    """The stop's own heading."""
    says: str
    """``Pause here: your turn``."""
    task: str
    """What to do now, in a sentence."""


Content = Line | Question | RowOfTwo | BothNumbers | Before | MoveCount | Pause


@dataclass(frozen=True, slots=True)
class Slide:
    """One picture of the video."""

    start: int
    """ms from the start of the video."""
    duration: int
    """ms"""
    stop: int
    """Index of the stop it belongs to, from 0."""
    stops: int
    """How many knots the thread has."""
    content: Content

    @property
    def shows(self) -> tuple[str, ...]:
        """Ids of the numbers of the ledger that stand on it."""
        numbers = RowOfTwo | BothNumbers | MoveCount
        return self.content.shows if isinstance(self.content, numbers) else ()

    @property
    def layout(self) -> str:
        """Name of its drawing in ``theme/slides.typ`` and of its page, such as ``row-of-two``."""
        return re.sub(r"(?<=[a-z])(?=[A-Z])", "-", type(self.content).__name__).lower()

    @property
    def at(self) -> str:
        """When it begins, such as ``0:54``."""
        return clock(Decimal(self.start) / 1000)

    @property
    def knots(self) -> tuple[str, ...]:
        """A word for each knot of the thread: ``done``, ``here`` or ``ahead``."""
        return tuple(
            "done" if stop < self.stop else "here" if stop == self.stop else "ahead"
            for stop in range(self.stops)
        )
