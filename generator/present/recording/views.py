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
