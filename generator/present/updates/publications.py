"""What each publication changed for whoever reads the site in one language, by the record alone."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from generator.model.published import LessonState, Publication, Published
from generator.present.updates.differences import Difference, differences
from generator.present.updates.paths import is_older
from generator.present.updates.said import is_for_people

_States = Mapping[str, Mapping[str, LessonState]]
"""By lesson and language, those that are there."""


class Went(StrEnum):
    """What became of a lesson."""

    NEW = "new"
    """It was not there before."""
    CHANGED = "changed"
    """It is there as before, and something differs."""
    RENAMED = "renamed"
    """It stands at another address, to which its old one leads on."""
    GONE = "gone"
    """It goes out no more."""


@dataclass(frozen=True, slots=True)
class LessonUpdate:
    """One lesson in one publication."""

    lesson: str
    """Its id, the new one where it was renamed."""
    title: str
    """Of today; its last one where it is gone."""
    went: Went
    """What became of it."""
    lesson_before: str = ""
    """Its id before, where it was renamed."""
    before: LessonState | None = None
    """What it said before; nothing for a new one."""
    now: LessonState | None = None
    """What it says now; nothing where it is gone."""
    languages_new: tuple[str, ...] = ()
    """Other languages that it has now."""
    languages_gone: tuple[str, ...] = ()
    """Other languages that it has no more."""
    languages_there: tuple[str, ...] = ()
    """Of one that is gone: other languages that still have it."""
    differences: tuple[Difference, ...] = ()
    """What differs for anybody who reads it, where it was there before and still is."""


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
    site: Publication | None = None
    found: list[Update] = []
    for number, at in enumerate(moments):
        before = {lesson: dict(there.get(lesson, {})) for lesson in by_time[at]}
        for lesson, spoken in by_time[at].items():
            there[lesson] = _standing(there.get(lesson, {}), spoken)
        told, last = said[at], site
        site = told[-1] if told else site
        lessons = _lessons(before, there, by_time[at], language, leads_on)
        found.append(
            Update(
                at=at,
                address=site.address if site else "",
                notes=tuple(dict.fromkeys(one.note for one in told if one.note)),
                undoes=next((one.undoes for one in told if one.undoes), ""),
                undone=undone.get(at, ""),
                first=number == 0,
                lessons_there=sum(language in spoken for spoken in there.values()),
                site=_site_change(last, site),
                lessons=tuple(sorted(lessons, key=lambda one: (one.title.casefold(), one.lesson))),
            )
        )
    return tuple(reversed(found))


def _standing(
    before: Mapping[str, LessonState], touched: Mapping[str, LessonState]
) -> dict[str, LessonState]:
    """The languages that a lesson is in, after a publication."""
    return {spoken: one for spoken, one in {**before, **touched}.items() if not one.gone}


def _by_time(published: Published) -> tuple[tuple[str, ...], Mapping[str, _States]]:
    """Every moment, the oldest first, and which states begin at each; the last of two at one moment counts."""
    moments = {one.at for one in published.publications}
    moments |= {state.at for states in published.lessons.values() for state in states}
    found: dict[str, dict[str, dict[str, LessonState]]] = {at: {} for at in sorted(moments)}
    for lesson, states in published.lessons.items():
        for state in states:
            found[state.at].setdefault(lesson, {})[state.language] = state
    return tuple(found), found


def _lessons(
    before: _States, now: _States, touched: _States, language: str, leads_on: Mapping[str, str]
) -> Iterator[LessonUpdate]:
    """The lessons that a publication touched, as far as anything differs for the language."""
    came_from = _came_from(before, now, touched, language, leads_on)
    left = set(came_from.values())
    for lesson in touched:
        if lesson in left:
            continue
        old = came_from.get(lesson, lesson)
        others = _others(before, old, language), _others(now, lesson, language)
        was, today = before[old].get(language), now[lesson].get(language)
        told = _lesson(lesson, was, today, others)
        if told is None:
            continue
        if old != lesson:
            yield replace(told, went=Went.RENAMED, lesson_before=old)
        elif told.went is not Went.CHANGED or _anything(told):
            yield told


def _came_from(
    before: _States,
    now: _States,
    names: Iterable[str],
    language: str,
    leads_on: Mapping[str, str],
) -> Mapping[str, str]:
    """By id of a lesson that is new, the id of one that is gone and leads on to it today."""
    gone = {
        leads_on[one]: one
        for one in names
        if one in leads_on and language in before[one] and language not in now[one]
    }
    new = (one for one in names if language in now[one] and language not in before[one])
    return {one: gone[end] for one in new if (end := leads_on.get(one, one)) in gone}


def _anything(told: LessonUpdate) -> bool:
    """Whether there is anything to tell of a lesson that is there as before."""
    return bool(told.differences or told.languages_new or told.languages_gone)


def _lesson(
    lesson: str,
    was: LessonState | None,
    now: LessonState | None,
    others: tuple[frozenset[str], frozenset[str]],
) -> LessonUpdate | None:
    """One lesson; nothing where the language never had it.

    Args:
        lesson: its id.
        was: what it said before.
        now: what it says now.
        others: the other languages it had before, and has now.
    """
    then, today = others
    new, gone = tuple(sorted(today - then)), tuple(sorted(then - today))
    if was is None and now is None:
        return None
    if now is None:
        assert was is not None  # noqa: S101  # one of both is there
        there = tuple(sorted(today))
        return LessonUpdate(lesson, was.title, Went.GONE, before=was, languages_there=there)
    if was is None:
        return LessonUpdate(lesson, now.title, Went.NEW, now=now)
    found = tuple(filter(is_for_people, differences(was, now)))
    return LessonUpdate(lesson, now.title, Went.CHANGED, "", was, now, new, gone, differences=found)


def _others(states: _States, lesson: str, language: str) -> frozenset[str]:
    """The other languages that a lesson is in."""
    return frozenset(states[lesson].keys() - {language})


def _site_change(before: Publication | None, now: Publication | None) -> SiteChange:
    if before is None or now is None:
        return SiteChange()
    return SiteChange(
        program=now.program if now.program != before.program else "",
        address=now.address if now.address != before.address else "",
        languages_new=_less(now.languages, before.languages),
        languages_gone=_less(before.languages, now.languages),
        pages_new=tuple(one for one in _less(now.pages, before.pages) if not is_older(one)),
        pages_gone=_less(before.pages, now.pages),
    )


def _less(these: Sequence[str], those: Sequence[str]) -> tuple[str, ...]:
    left = set(those)
    return tuple(one for one in these if one not in left)
