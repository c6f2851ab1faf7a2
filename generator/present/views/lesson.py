"""The lesson page."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.asked import PartingView
from generator.present.views.page import LinkView, PageView
from generator.present.views.stop import StopView
from generator.present.views.video import PartView, VideoView


@dataclass(frozen=True, slots=True)
class StopOnPage:
    """A stop at its place on the lesson page."""

    stop: StopView
    styles: tuple[str, ...]
    """Styles the page begins without, at the first stop that needs them."""
    script: str
    """The script of its element, at the first stop that needs it; else empty."""
    first_of_kind: bool
    """Whether none of its kind stands above."""
    holds_player: bool
    """Whether the video stands here."""
    part: PartView | None
    """What of the film comes next, where something does."""
    corrections: tuple[str, ...]
    """Numbers that changed after the video was made."""


@dataclass(frozen=True, slots=True)
class TakeHomeView:
    """How a lesson comes along where there is no network; made once it is known how large the copy is."""

    template: ClassVar[str] = "parts/take-home.html"
    copy: LinkView
    """The lesson as one file to unpack, with its size."""
    keep: str
    """The list of what to keep on the device; empty where that is not offered."""
    worker: str
    """The script that opens what is kept."""


@dataclass(frozen=True, slots=True)
class EndingView:
    """All gaps of a lesson with their numbers."""

    picture: str
    """Path of the drawing."""
    says: str
    """It in words."""


@dataclass(frozen=True, slots=True)
class LessonView:
    """A lesson page."""

    template: ClassVar[str] = "lesson.html"
    page: PageView
    id: str
    title: str
    summary: Markup
    notice: str
    """That parts are not translated yet, or empty."""
    meta: str
    """``Grades 3–5 · 18 minutes``"""
    minutes: str
    """``In minutes: 3 to watch …``, what they are for."""
    beside: tuple[str, ...]
    """What the adult beside a child can do, a line for each kind of stop that is there."""
    you_need: tuple[str, ...]
    goals: tuple[str, ...]
    video: VideoView | None
    stops: tuple[StopOnPage, ...]
    shapes: frozenset[str]
    """Names of the base-ten blocks that they draw."""
    parting: PartingView | None
    """One last question, below the stops."""
    player_above: bool
    """Whether the video stands above the stops, for none of them holds it."""
    open_data: Markup
    """What the lesson is, as schema.org JSON-LD, safe inside a script block."""
    downloads: tuple[LinkView, ...]
    """Cards, worksheet, answer key, practice."""
    screens: tuple[LinkView, ...]
    """What else a family reads: what is said in the video."""
    teachers: tuple[LinkView, ...]
    """The teaching notes."""
    ending: EndingView | None
    """None where it compares nothing."""
    shared: str
    """Address of the picture that a link to it shows; empty where it has none, or the site no address."""
    pack: LinkView | None
    """The recording pack, where it is made."""
    later: str
    """Script that brings what the page can wait for."""
    thread: str
    """Script of the thread, before those of the stops."""
    finish: str
    """Marks of the lesson and of its numbers, with which a finish code begins."""
    care: tuple[str, ...]
