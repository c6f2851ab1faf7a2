"""What there is to say of a page that lessons have; its entry in the table says it all."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum

from generator.compute.result import LessonResult
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.page import Build, Look
from generator.present.views.page import View


class Reader(Enum):
    """Whom a page is for, and so where the others link to it."""

    FAMILY = "family"
    """Printed pages are linked below the lesson and in the notes, others beside the video."""
    TEACHER = "teacher"
    """Linked below the lesson."""
    CLASS = "class"
    """For a teacher's whole class to see at once: linked in the notes."""
    EDUCATOR = "educator"
    """The recording pack: its first page is linked below the lesson, the others on the first."""
    HOLDER = "holder"
    """Whoever holds a sheet printed before: linked where its stamp is asked for, and nowhere in the lesson."""
    ELSEWHERE = "elsewhere"
    """Whoever meets it on another site; nothing here links to it, and the notes say how to show it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LessonPage:
    """One page of every lesson that has it. Nothing that matters has a default."""

    name: str
    """Its path in the lesson's folder: ``worksheet.html``."""
    view: Callable[[PageInLesson], View]
    """Makes what its template sees; a view names its template."""
    title: str
    """Key of its title among the site's words; empty for the lesson itself, which has its own."""
    link: str
    """Key of what links to it say."""
    look: Look
    """The styles and the script it begins with."""
    reader: Reader
    printed: bool
    """Whether it is made for paper, or as well for paper."""
    searched: bool
    """Whether search engines may list it."""
    builds: frozenset[Build]
    """In which builds it is made."""
    framed: bool
    """Whether other sites may show it inside of theirs; then it stands in ``embed/``, for hosts send headers by folder."""
    in_copy: bool
    """Whether the copy to take home holds it."""
    offline: bool
    """Whether it is of use without a network, and so is kept with the lesson."""
    has: Callable[[LessonResult], bool]
    """Whether a lesson has this page at all."""

    @property
    def sheet(self) -> str:
        """What it is called as a sheet that bears a stamp: ``worksheet``, and the lesson itself ``lesson``."""
        return "lesson" if self.name == "index.html" else self.name.removesuffix(".html")
