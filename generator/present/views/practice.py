"""Practice problems and their page."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class PracticeView:
    """A practice problem made from a seed."""

    number: int
    kind: str
    """``gap``, ``count`` or ``which``: what it asks for."""
    says: str
    """``240 − 160 =``, or a question in words."""
    answer: str
    first: str
    second: str
    """Digits for a machine."""


@dataclass(frozen=True, slots=True)
class SizeView:
    """How large the numbers of practice are."""

    largest: int
    label: str
    """``up to 1,000``"""
    chosen: bool
    """Whether it is the one of the lesson's own numbers."""


@dataclass(frozen=True, slots=True)
class PracticePageView:
    """Problems without end, the first of them complete without script."""

    template: ClassVar[str] = "practice.html"
    page: PageView
    title: str
    back: LinkView
    lesson: str
    """Its id, by which a class link is known."""
    seed: str
    """Of the lesson's own problems: the name it had first."""
    per: int
    """What one count stands for in the lesson; 0 where nothing is counted."""
    sizes: tuple[SizeView, ...]
    problems: tuple[PracticeView, ...]
    another_day: LinkView | None
    """The practice of the lesson before; nothing where there is none."""
