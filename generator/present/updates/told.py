"""The publications of a language as they are told: lessons of which the same is said, together where they are many."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator

from generator.present.pages.page import Surround
from generator.present.updates.differences import ChangeKind
from generator.present.updates.lesson_lines import lesson_lines
from generator.present.updates.lesson_updates import LessonUpdate
from generator.present.updates.line import Line, one_line
from generator.present.updates.moment import day_in_words, time_in_words
from generator.present.updates.publications import Update
from generator.present.updates.site_lines import site_lines
from generator.present.views.page import LinkView
from generator.present.views.updates import LessonUpdateView, UpdateView
from generator.present.words.say import Say

APART = 20
"""So many lessons of one publication are told one by one; of more, those of which the same is said stand together."""


def told(update: Update, there: Collection[str], surround: Surround) -> UpdateView:
    """One publication in the words of a language.

    Args:
        update: what it changed.
        there: ids of the lessons that the language has today; only to these a link leads.
        surround: of the language.
    """
    say = surround.say
    lines, lessons = tuple(site_lines(update, say)), tuple(_lessons(update, there, surround))
    if not (lines or lessons or update.notes):
        lines = (Line(say("update_nothing")),)
    return UpdateView(
        id=place_of(update.at),
        at=update.at,
        day=day_in_words(update.at, say),
        time=time_in_words(update.at),
        changed_at=max(update.at, update.undone),
        address=update.address,
        notes=tuple(map(one_line, update.notes)),
        lines=lines,
        lessons=lessons,
    )


def place_of(at: str) -> str:
    """The place of a publication on its page: ``at-20260314T170300Z``."""
    return "at-" + "".join(sign for sign in at if sign.isascii() and sign.isalnum())


def _lessons(
    update: Update, there: Collection[str], surround: Surround
) -> Iterator[LessonUpdateView]:
    """Of the first publication no lesson is told: all are new, and the front page has them."""
    if update.first:
        return
    day, say = day_in_words(update.at, surround.say), surround.say
    if len(update.lessons) <= APART:
        for one in update.lessons:
            lines = lesson_lines(one, day, say, with_stamps=True)
            yield LessonUpdateView(one_line(one.title), _href(one, there, surround), (), lines)
        return
    alike: dict[tuple[Line, ...], list[LessonUpdate]] = {}
    for one in update.lessons:
        alike.setdefault(lesson_lines(one, day, say, with_stamps=_apart(one)), []).append(one)
    for lines, lessons in alike.items():
        links = (LinkView(_href(one, there, surround), one_line(one.title)) for one in lessons)
        yield _together(tuple(links), lines, update, say)


def _apart(one: LessonUpdate) -> bool:
    """Whether a lesson is told with all its stamps even among many: a number of it changed."""
    return any(differs.kind is ChangeKind.NUMBER for differs in one.differences)


def _together(
    lessons: tuple[LinkView, ...], lines: tuple[Line, ...], update: Update, say: Say
) -> LessonUpdateView:
    if len(lessons) == 1:
        return LessonUpdateView(lessons[0].label, lessons[0].href, (), lines)
    if len(lessons) == update.lessons_there:
        return LessonUpdateView(say("update_all_lessons", n=len(lessons)), "", (), lines)
    return LessonUpdateView(say("update_many_lessons", n=len(lessons)), "", lessons, lines)


def _href(one: LessonUpdate, there: Collection[str], surround: Surround) -> str:
    return f"{surround.folder}{one.lesson}/index.html" if one.lesson in there else ""


def by_day(views: Iterable[UpdateView]) -> tuple[tuple[str, tuple[UpdateView, ...]], ...]:
    """Each day with its publications, in their order."""
    days: dict[str, list[UpdateView]] = {}
    for one in views:
        days.setdefault(one.day, []).append(one)
    return tuple((day, tuple(held)) for day, held in days.items())
