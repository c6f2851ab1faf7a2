"""Who must be told of what changed: families with paper, teachers with links, whoever sees the film."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from generator.model.figure import FigureKind
from generator.present.state import FilmSays
from generator.present.updates.differences import ChangeKind, Difference
from generator.publish.compare import LessonChanges, SiteChanges

_ANSWERS = {
    FigureKind.GAP,
    FigureKind.COUNT,
    FigureKind.LEFT_OVER,
    FigureKind.ANSWER,
    FigureKind.EATEN,
    FigureKind.NEEDED,
}
"""What a learner works out; the rest of the numbers she is given."""
_NUMBERS = {ChangeKind.NUMBER, ChangeKind.NUMBER_GONE, ChangeKind.NUMBER_NEW}
_LINKS = {
    ChangeKind.LESSON_GONE,
    ChangeKind.STOP_GONE,
    ChangeKind.STOP_ADDRESS,
    ChangeKind.PAGE_GONE,
}


@dataclass(frozen=True, slots=True)
class SheetTold:
    """A sheet that was printed and says something else now."""

    lesson: LessonChanges
    sheet: str
    """``worksheet``."""
    was: str
    """Its stamp before."""
    now: str
    """Its stamp now; empty where there is no such sheet any more."""


@dataclass(frozen=True, slots=True)
class LinkTold:
    """A lesson whose links or answers are others now."""

    lesson: LessonChanges
    lost: tuple[Difference, ...]
    """What an old link may lead to in vain."""
    answers: int
    """How many answers are others, new or gone."""


@dataclass(frozen=True, slots=True)
class FilmTold:
    """A lesson whose film says another number than its page, and did not before."""

    lesson: LessonChanges
    says: tuple[FilmSays, ...]


@dataclass(frozen=True, slots=True)
class Told:
    """Who must be told."""

    families: tuple[SheetTold, ...]
    teachers: tuple[LinkTold, ...]
    film: tuple[FilmTold, ...]


def to_be_told(changes: SiteChanges) -> Told:
    """Who must be told of what changed."""
    return Told(
        tuple(sheet for one in changes.lessons for sheet in _sheets(one)),
        tuple(link for one in changes.lessons for link in _links(one)),
        tuple(FilmTold(one, one.film) for one in changes.lessons if one.film),
    )


def _sheets(one: LessonChanges) -> Iterator[SheetTold]:
    """Sheets of which old ones may be in somebody's hands."""
    if one.before is None:
        return
    now = one.after.state.stamps if one.after else {}
    for sheet, was in one.before.state.stamps.items():
        if now.get(sheet, "") != was:
            yield SheetTold(one, sheet, was, now.get(sheet, ""))


def _links(one: LessonChanges) -> Iterator[LinkTold]:
    lost = tuple(
        each
        for each in one.differences
        if each.kind in _LINKS
        and (each.kind is not ChangeKind.PAGE_GONE or each.name.endswith((".html", ".pdf")))
    )
    numbers = [each.new or each.old for each in one.differences if each.kind in _NUMBERS]
    answers = sum(number is not None and number.kind in _ANSWERS for number in numbers)
    if lost or answers or (one.renamed and one.after):
        yield LinkTold(one, lost, answers)
