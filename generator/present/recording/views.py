"""What the templates of the recording pack see."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.recording.slides.slide import Slide
from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class CueView:
    """One line of the cue sheet: a stop."""

    heading: str
    planned: str
    """``0:41–0:54``, or empty for a stop without a time."""
    words: str
    spoken: str
    """``12 s``, to say the words at the pace."""
    given: str
    """``13 s``, between the times of the lesson."""
    fits: str
    """Whether the words fit, and what is left."""
    running: str
    """Where the stop begins when all is said at the pace, such as ``0:38``."""
    table: tuple[str, ...]
    """What is on the table."""


@dataclass(frozen=True, slots=True)
class ShotView:
    """What one stop needs in front of the camera."""

    heading: str
    things: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class PackView:
    """First page of the recording pack."""

    template: ClassVar[str] = "recording/pack.html"
    page: PageView
    title: str
    back: LinkView
    links: tuple[LinkView, ...]
    """Script, slides and caption draft."""
    cues_says: str
    """At which pace the times are worked out."""
    cues: tuple[CueView, ...]
    total: CueView
    shots: tuple[ShotView, ...]
    again: tuple[str, ...]
    """What to film again, or that there is nothing."""


@dataclass(frozen=True, slots=True)
class SpokenView:
    """One paragraph of the script."""

    text: str
    words: int
    halts: bool
    """Whether the script waits after it."""


@dataclass(frozen=True, slots=True)
class ScriptStopView:
    """What is said at one stop."""

    heading: str
    at: str
    """Where speaking begins, such as ``0:41``."""
    parts: tuple[SpokenView, ...]
    pause: str
    """What happens at its end, or empty."""


@dataclass(frozen=True, slots=True)
class ScriptView:
    """The script in large type."""

    template: ClassVar[str] = "recording/script.html"
    page: PageView
    title: str
    back: LinkView
    pace: int
    """Words a minute to begin with."""
    stops: tuple[ScriptStopView, ...]


@dataclass(frozen=True, slots=True)
class SlidesView:
    """The slides for filming."""

    template: ClassVar[str] = "recording/slides.html"
    page: PageView
    title: str
    back: LinkView
    slides: tuple[Slide, ...]


@dataclass(frozen=True, slots=True)
class NumberView:
    """One number to say."""

    key: str
    """Of its tick: a number that changes is not ticked any more."""
    at: str
    """When it is seen or said, or empty."""
    what: str
    """``Apple, 1 medium``."""
    side: str
    """Or empty."""
    shown: str
    """``410 kcal``"""
    said: str
    """``four hundred ten``, or empty in a language whose number words nobody wrote down."""
    was: str
    """What the film says in its place, or empty."""


@dataclass(frozen=True, slots=True)
class StopNumbersView:
    """The numbers of one stop."""

    heading: str
    numbers: tuple[NumberView, ...]


@dataclass(frozen=True, slots=True)
class NumbersView:
    """The sheet of numbers to say."""

    template: ClassVar[str] = "recording/numbers.html"
    page: PageView
    title: str
    back: LinkView
    lesson: str
    """Its id: ticks are kept by it."""
    says: str
    """What is to be done with the sheet."""
    to_say: tuple[StopNumbersView, ...]
    """All of them, or after filming those that are others now, or new."""
    gone: tuple[str, ...]
    """What the film says of a food that is not in the lesson any more."""
    filmed_on: str
    """The day, or empty."""
    filmed: tuple[StopNumbersView, ...]
    """What the film says rightly."""
