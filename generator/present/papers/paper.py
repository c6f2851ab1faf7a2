"""What there is to say of a paper that lessons have as a file; its entry in the table says it all."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from generator.compute.result import LessonResult
from generator.model.papers import PaperWord
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.page_of_lesson import Reader

if TYPE_CHECKING:
    from _typeshed import DataclassInstance


class Size(Enum):
    """A size of paper."""

    A4 = "a4"
    LETTER = "letter"

    @property
    def in_typst(self) -> str:
        """What typst calls it."""
        return "us-letter" if self is Size.LETTER else self.value


@dataclass(frozen=True, slots=True, kw_only=True)
class Paper:
    """One paper of every lesson that has it. Nothing has a default."""

    name: PaperWord
    """What ``site.yaml`` calls it, and how its files' names begin."""
    view: Callable[[PageInLesson], DataclassInstance]
    """Makes what its template sees; a view of a page serves."""
    template: str
    """Its file in ``theme/papers/``, without ``.typ``."""
    title: str
    """Key of its title among the site's words."""
    reader: Reader
    has: Callable[[LessonResult], bool]
    """Whether a lesson has it at all."""


@dataclass(frozen=True, slots=True)
class PaperFile:
    """One file: a paper, or the packet of all of them, in one size."""

    name: PaperWord
    title: str
    """Key of its title among the site's words."""
    papers: tuple[Paper, ...]
    """What stands in it, in order."""
    size: Size
    large: bool
    """Whether its letters are 18 pt and up instead of 12."""
    path: str
    """From the site's root: ``soup-night/papers/worksheet-a4.pdf``."""
