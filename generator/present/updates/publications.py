"""What each publication changed for whoever reads the site in one language, by the record alone."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass

from generator.model.published import LessonState, Publication, Published
from generator.present.updates.lesson_updates import LessonUpdate, States, Step, lesson_updates
from generator.present.updates.paths import is_older


@dataclass(frozen=True, slots=True)
class SiteChange:
    """What differs of the site itself; each empty where it is as before."""

    program: str = ""
    """Version of the program that the site is made with now."""
    address: str = ""
    """Where the site stands now, where it stood elsewhere before."""
    languages_new: tuple[str, ...] = ()
    """Tags of languages that it has now."""
    languages_gone: tuple[str, ...] = ()
    """Tags of those it has no more."""
    pages_new: tuple[str, ...] = ()
    """Paths of pages that are no lesson's; what this page itself grows to is none of them."""
    pages_gone: tuple[str, ...] = ()
    """Paths of those that are there no more."""


@dataclass(frozen=True, slots=True)
class Update:
    """One time the site went out."""

    at: str
    """As ``2026-11-26T17:03:00Z``; no two have the same."""
    address: str
    """Of the site then; empty where it had none."""
    notes: tuple[str, ...]
    """What those who published said of it."""
    undoes: str
    """``at`` of the one it takes back, or empty."""
    undone: str
    """``at`` of the one that took it back, or empty."""
    first: bool
    """Whether nothing was published with a record before."""
    lessons_there: int
    """How many lessons of the language the site had then."""
    site: SiteChange
    """What differs of the site itself."""
    lessons: tuple[LessonUpdate, ...]
    """By their titles."""


def updates(published: Published, language: str, leads_on: Mapping[str, str]) -> tuple[Update, ...]:
    """Every publication, the newest first.

    Two that went out in one second, by two people, are told as one.

    Args:
        published: the record.
        language: whose lessons are told.
        leads_on: by id of a lesson that was renamed, the id it has today.
    """
    moments, by_time = _by_time(published)
    said = {at: tuple(one for one in published.publications if one.at == at) for at in moments}
    undone = {one.undoes: one.at for one in published.publications if one.undoes}
    there: dict[str, dict[str, LessonState]] = {}
    known: set[str] = set()
    site: Publication | None = None
    found: list[Update] = []
    for number, at in enumerate(moments):
        before = {lesson: dict(there.get(lesson, {})) for lesson in by_time[at]}
        for lesson, spoken in by_time[at].items():
            there[lesson] = _standing(there.get(lesson, {}), spoken)
        told, last = said[at], site
        site = told[-1] if told else site
        lessons = lesson_updates(Step(before, there, frozenset(known)), language, leads_on)
        known |= {lesson for lesson in by_time[at] if language in there[lesson]}
        found.append(
            Update(
                at=at,
                address=site.address if site else "",
                notes=tuple(dict.fromkeys(one.note for one in told if one.note)),
                undoes=next((one.undoes for one in told if one.undoes), ""),
                undone=undone.get(at, ""),
                first=number == 0,
                lessons_there=sum(language in spoken for spoken in there.values()),
                site=_site_change(last, site, published.lessons.keys()),
                lessons=tuple(sorted(lessons, key=lambda one: (one.title.casefold(), one.lesson))),
            )
        )
    return tuple(reversed(found))


def _standing(
    before: Mapping[str, LessonState], touched: Mapping[str, LessonState]
) -> dict[str, LessonState]:
    """The languages that a lesson is in, after a publication."""
    return {spoken: one for spoken, one in {**before, **touched}.items() if not one.gone}


def _by_time(published: Published) -> tuple[tuple[str, ...], Mapping[str, States]]:
    """Every moment, the oldest first, and which states begin at each; the last of two at one moment counts."""
    moments = {one.at for one in published.publications}
    moments |= {state.at for states in published.lessons.values() for state in states}
    found: dict[str, dict[str, dict[str, LessonState]]] = {at: {} for at in sorted(moments)}
    for lesson, states in published.lessons.items():
        for state in states:
            found[state.at].setdefault(lesson, {})[state.language] = state
    return tuple(found), found


def _site_change(
    before: Publication | None, now: Publication | None, lessons: AbstractSet[str]
) -> SiteChange:
    if before is None or now is None:
        return SiteChange()
    then, today = (_own_pages(one.pages, lessons) for one in (before, now))
    return SiteChange(
        program=now.program if now.program != before.program else "",
        address=now.address if now.address != before.address else "",
        languages_new=_less(now.languages, before.languages),
        languages_gone=_less(before.languages, now.languages),
        pages_new=_less(today, then),
        pages_gone=_less(then, today),
    )


def _own_pages(pages: Iterable[str], lessons: AbstractSet[str]) -> tuple[str, ...]:
    """Without what leads on from addresses of lessons, and what this page itself grows to."""
    return tuple(
        page for page in pages if not is_older(page) and lessons.isdisjoint(page.split("/")[:-1])
    )


def _less(these: Sequence[str], those: Sequence[str]) -> tuple[str, ...]:
    left = set(those)
    return tuple(one for one in these if one not in left)
