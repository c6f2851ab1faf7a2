"""A page in its lesson: all that its view is made from, the links to its sisters among it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from generator.compute.result import LessonResult
from generator.present.pages.page import Surround
from generator.present.views.page import LinkView, PageView
from generator.present.views.stop import StopView


@dataclass(frozen=True, slots=True)
class LessonLinks:
    """The pages a lesson has, as its other pages link to them."""

    lesson: LinkView
    """The way back to the lesson's own page."""
    paper: tuple[LinkView, ...]
    """What can be printed."""
    screens: tuple[LinkView, ...]
    """What else a family reads on the screen."""
    teachers: tuple[LinkView, ...]
    whole_class: tuple[LinkView, ...]
    """What a teacher shows to all at once."""
    filming: tuple[LinkView, ...]
    """The recording pack, its first page first; empty where it is not made."""


@dataclass(frozen=True, slots=True)
class PageInLesson:
    """One page of a lesson before it is made."""

    result: LessonResult
    stops: tuple[StopView, ...]
    """As any page of the lesson shows them."""
    surround: Surround
    page: PageView
    """What stands around its content."""
    links: LessonLinks
    stamps: Mapping[str, str] = field(default_factory=dict)
    """By sheet: ``worksheet``, ``family``, ``lesson``; nothing while its pages are filled, of which they are made."""
