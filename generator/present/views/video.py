"""The recording, and the same in writing."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from markupsafe import Markup

from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class TrackView:
    """A caption file of the video."""

    src: str
    language: str
    label: str
    default: bool


@dataclass(frozen=True, slots=True)
class ChapterView:
    """The part of the video that leads to a stop."""

    label: str
    """Heading of the stop."""
    href: str
    """Place of the stop on the page: ``#lunch``."""
    at: str
    """``0:41``: where the part begins."""
    start: float
    end: float
    """Seconds."""
    pause: str
    """``0:54``: the pause point at its end, or empty."""


@dataclass(frozen=True, slots=True)
class PartView:
    """The part of the film that a stop sends to, as a link that halts by itself where no script runs."""

    moments: str
    """``54,70`` or ``156``: its seconds, as a temporal fragment names them (W3C Media Fragments 1.0, 4.2.1)."""
    label: str
    """``Watch 0:54 to 1:10``"""


@dataclass(frozen=True, slots=True)
class ElsewhereView:
    """A recording that another site shows."""

    href: str
    says: str
    """Where the link leads, and whose rules hold there."""


@dataclass(frozen=True, slots=True)
class FilmView:
    """One of several files that hold the same lesson."""

    src: str
    """Path of the file."""
    kind: str
    """``file``, ``smaller`` or ``slides``: the key that names it."""
    label: str
    """What it is, with its megabytes."""


@dataclass(frozen=True, slots=True)
class VideoView:
    """The recording."""

    src: str
    """Path of the file, or empty where only another site shows it."""
    poster: str
    """Path of a still, or empty."""
    films: tuple[FilmView, ...]
    """The files to choose from, the one that is shown first; none where there is only one."""
    tracks: tuple[TrackView, ...]
    chapters_track: str
    """Path of the chapters as WebVTT, or empty."""
    pauses: tuple[tuple[str, str], ...]
    """Seconds and the stop each pause belongs to."""
    chapters: tuple[ChapterView, ...]
    elsewhere: ElsewhereView | None


@dataclass(frozen=True, slots=True)
class SaidView:
    """A sentence of the video."""

    at: str
    """``0:41``"""
    text: str


@dataclass(frozen=True, slots=True)
class TranscriptView:
    """All that is said in a video."""

    template: ClassVar[str] = "transcript.html"
    page: PageView
    title: str
    back: LinkView
    language: str
    """Of what is said; the page around it may be in another."""
    parts: tuple[tuple[LinkView, tuple[SaidView, ...]], ...]
    """A link to the stop that each part leads to, and its sentences."""
    open_data: Markup
    """The recording and its parts as JSON-LD, or nothing."""
