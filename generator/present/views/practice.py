"""Practice problems and their page."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.views.page import LinkView, PageView


@dataclass(frozen=True, slots=True)
class PracticeView:
    """A practice problem made from a seed."""

    number: int
    says: str
    """``240 − 160 =``"""
    answer: str
    larger_number: str
    smaller_number: str
    """Digits for a machine."""


@dataclass(frozen=True, slots=True)
class SizeView:
    """How large the numbers of practice are."""

    largest: int
    label: str
    """``up to 1,000``"""
    chosen: bool
    """Whether it is the one of the lesson's grades."""


@dataclass(frozen=True, slots=True)
class PracticePageView:
    """Problems without end to practice subtraction, the first of them complete without script."""

    template: ClassVar[str] = "practice.html"
    page: PageView
    title: str
    back: LinkView
    seed: str
    sizes: tuple[SizeView, ...]
    problems: tuple[PracticeView, ...]
    stamp: str
