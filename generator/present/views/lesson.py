"""The lesson page."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from markupsafe import Markup

from generator.present.views.page import LinkView, PageView
from generator.present.views.stop import StopView
from generator.present.views.video import VideoView


@dataclass(frozen=True, slots=True)
class LessonView:
    """A lesson page."""

    page: PageView
    id: str
    title: str
    summary: Markup
    notice: str
    """That parts are not translated yet, or empty."""
    meta: str
    """``grades 3–5 · 18 minutes``"""
    you_need: tuple[str, ...]
    goals: tuple[str, ...]
    video: VideoView | None
    stops: tuple[StopView, ...]
    corrections: Mapping[str, tuple[str, ...]]
    """By stop: numbers that changed after the video was made."""
    open_data: Markup
    """What the lesson is, as schema.org JSON-LD, safe inside a script block."""
    downloads: tuple[LinkView, ...]
    """Cards, worksheet, answer key."""
    notes: LinkView
    """The teaching notes."""
    styles_at: Mapping[str, tuple[str, ...]]
    """By id of the stop that first needs them: addresses of styles the page begins without."""
    pack: LinkView | None
    """The recording pack, where it is made."""
    take_home: LinkView | None
    """The lesson as one file to unpack; none in the preview."""
    care: tuple[str, ...]
    allergens: str
    """``Foods shown contain wheat and milk.``, or empty."""
    stamp: str
