"""What goes out, made from nothing: the built site, and what each of its lessons says."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from generator import __version__
from generator.model.published import LessonState, Publication, Published
from generator.model.site import SiteFile

States = Mapping[str, Mapping[str, LessonState]]
"""By lesson and language."""
_MOMENT = "%Y-%m-%dT%H:%M:%SZ"


@dataclass(frozen=True, slots=True)
class GoingOut:
    """A site as it was just built."""

    folder: Path
    """Where it lies."""
    site: SiteFile
    lessons: tuple[str, ...]
    """Ids of the lessons that are published, in the order of their folders."""
    states: States
    past: Published
    """What was published before."""


@dataclass(frozen=True, slots=True)
class Steps:
    """What a publication asks of the rest of the program."""

    check: Callable[[], None]
    """Says what is to be looked at; raises ``LessonError`` where something must be put right."""
    build: Callable[[], GoingOut]
    """Builds the site from nothing; raises ``LessonError`` and leaves the old one where it cannot."""
    changes: Callable[[str], str]
    """Says what changed by meaning since a revision, or without one since the last publication; nothing where that cannot be said."""


def moment(past: Published) -> str:
    """This moment as the record writes it; later than every one in it, also where a clock went wrong."""
    now = datetime.now(UTC).replace(microsecond=0)
    if past.publications:
        last = datetime.strptime(past.publications[-1].at, _MOMENT).replace(tzinfo=UTC)
        now = max(now, last + timedelta(seconds=1))
    return now.strftime(_MOMENT)


def publication(going: GoingOut, at: str, to: str, note: str, undoes: str = "") -> Publication:
    """The line of the record for what goes out."""
    return Publication(
        at=at,
        program=__version__,
        address=going.site.address,
        languages=going.site.languages,
        lessons=going.lessons,
        pages=tuple(pages_of_no_lesson(going.folder, going.lessons)),
        to=to,
        note=" ".join(note.split()),
        undoes=undoes,
    )


def pages_of_no_lesson(site: Path, lessons: tuple[str, ...]) -> Iterator[str]:
    """Paths of the pages of a built site that belong to no lesson, in order."""
    for file in sorted(site.rglob("*.html")):
        path = file.relative_to(site)
        if not set(path.parts[:2]) & set(lessons):
            yield path.as_posix()


def is_recorded(going: GoingOut) -> bool:
    """Whether the record says already what goes out."""
    last = going.past.publications[-1] if going.past.publications else None
    if last is None or set(last.lessons) != set(going.lessons):
        return False
    told = [(lesson, *one) for lesson, held in going.states.items() for one in held.items()]
    return all(_as_before(going.past, *one) for one in told) and not _gone(going)


def _as_before(past: Published, lesson: str, language: str, state: LessonState) -> bool:
    before = past.last(lesson, language)
    return before is not None and before.says_as(state)


def _gone(going: GoingOut) -> bool:
    """Whether a language of a lesson went out before and does no more."""
    return any(
        not state.gone and state.language not in going.states.get(lesson, {})
        for lesson, states in going.past.lessons.items()
        for state in {one.language: one for one in states}.values()
    )


def states_at(past: Published, at: str) -> States:
    """What each lesson said when a publication of before had gone out.

    Args:
        past: the record.
        at: moment of that publication.
    """
    then: dict[str, dict[str, LessonState]] = {}
    for lesson, states in past.lessons.items():
        last = {one.language: one for one in states if one.at <= at}
        then[lesson] = {language: one for language, one in last.items() if not one.gone}
    return {lesson: held for lesson, held in then.items() if held}
