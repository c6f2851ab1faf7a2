"""What became of each lesson in one publication: changed, new, back, gone, or at another address."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum

from generator.model.published import LessonState
from generator.present.updates.differences import Difference, differences
from generator.present.updates.said import is_for_people

States = Mapping[str, Mapping[str, LessonState]]
"""By lesson and language, those that are there."""


class Went(StrEnum):
    """What became of a lesson."""

    NEW = "new"
    """It was not there before."""
    CHANGED = "changed"
    """It is there as before, and something differs."""
    RENAMED = "renamed"
    """It stands at another address, to which its old one leads on."""
    MOVED = "moved"
    """Under the same title it stands at another address, and nobody says that the old one leads on."""
    BACK = "back"
    """It was there once, was gone, and is there again."""
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
    """Its id before, where it has another now."""
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
class Step:
    """The lessons before a publication and after it."""

    before: States
    """Of every lesson that it touched."""
    now: States
    """Of these, and of all others."""
    known: frozenset[str]
    """Ids of the lessons that were ever there in the language."""


def lesson_updates(
    step: Step, language: str, leads_on: Mapping[str, str]
) -> Iterator[LessonUpdate]:
    """The lessons that a publication touched, as far as anything differs for the language.

    Args:
        step: the lessons before and after it.
        language: whose lessons are told.
        leads_on: by id of a lesson that was renamed, the id it has today.
    """
    renamed = _renamed(step, language, leads_on)
    moved = _moved(step, language, {*renamed, *renamed.values()})
    came_from = renamed | moved
    left = set(came_from.values())
    for lesson in step.before:
        if lesson in left:
            continue
        old = came_from.get(lesson, lesson)
        told = _lesson(lesson, old, step, language)
        if told is None:
            continue
        if old != lesson:
            went = Went.RENAMED if lesson in renamed else Went.MOVED
            yield replace(told, went=went, lesson_before=old)
        elif told.went is not Went.CHANGED or _anything(told):
            yield told


def _renamed(step: Step, language: str, leads_on: Mapping[str, str]) -> dict[str, str]:
    """By id of a lesson that is new, the id of one that is gone and leads on to it today."""
    gone = {leads_on[one]: one for one in _gone(step, language) if one in leads_on}
    new = _new(step, language)
    return {one: gone[end] for one in new if (end := leads_on.get(one, one)) in gone}


def _moved(step: Step, language: str, without: set[str]) -> dict[str, str]:
    """The same of lessons that share a title with one that is gone, and with no other."""
    gone = {one: step.before[one][language].title for one in _gone(step, language)}
    new = {one: step.now[one][language].title for one in _new(step, language)}
    titles = Counter((*gone.values(), *new.values()))
    by_title = {
        title: one for one, title in gone.items() if one not in without and titles[title] == 2
    }
    return {
        one: by_title[title]
        for one, title in new.items()
        if one not in without and title in by_title
    }


def _gone(step: Step, language: str) -> Iterator[str]:
    return (one for one, was in step.before.items() if language in was.keys() - step.now[one])


def _new(step: Step, language: str) -> Iterator[str]:
    return (one for one, was in step.before.items() if language in step.now[one].keys() - was)


def _anything(told: LessonUpdate) -> bool:
    """Whether there is anything to tell of a lesson that is there as before."""
    return bool(told.differences or told.languages_new or told.languages_gone)


def _lesson(lesson: str, old: str, step: Step, language: str) -> LessonUpdate | None:
    """One lesson; nothing where the language has it neither before nor now."""
    was, now = step.before[old].get(language), step.now[lesson].get(language)
    then, today = step.before[old].keys() - {language}, step.now[lesson].keys() - {language}
    if was is None and now is None:
        return None
    if now is None:
        assert was is not None  # noqa: S101  # one of both is there
        there = tuple(sorted(today))
        return LessonUpdate(lesson, was.title, Went.GONE, before=was, languages_there=there)
    if was is None:
        return LessonUpdate(lesson, now.title, _again(lesson, step), now=now)
    return LessonUpdate(
        lesson,
        now.title,
        Went.CHANGED,
        before=was,
        now=now,
        languages_new=tuple(sorted(today - then)),
        languages_gone=tuple(sorted(then - today)),
        differences=tuple(filter(is_for_people, differences(was, now))),
    )


def _again(lesson: str, step: Step) -> Went:
    return Went.BACK if lesson in step.known else Went.NEW
