"""What a publication changed in one lesson, in sentences, and who is to know of it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from generator.present.updates.differences import ChangeKind, Difference
from generator.present.updates.lesson_updates import LessonUpdate, Went
from generator.present.updates.line import Line, one_line
from generator.present.updates.said import SHEET_TITLES, page_title, said
from generator.present.words.say import Say

MOST = 12
"""Sentences about numbers of one lesson; a comparison with other foods changes some twenty at once."""
_NUMBERS = {ChangeKind.NUMBER, ChangeKind.NUMBER_NEW, ChangeKind.NUMBER_GONE}
_FILES = {ChangeKind.PAGE_GONE, ChangeKind.PAGE_NEW}
_STOPS = {ChangeKind.STOP_NEW, ChangeKind.STOP_GONE}


def lesson_lines(told: LessonUpdate, day: str, say: Say, *, with_stamps: bool) -> tuple[Line, ...]:
    """The sentences, what matters most first.

    Args:
        told: what became of the lesson.
        day: of the publication, in words.
        say: in the language of the page.
        with_stamps: whether the stamps of its sheets stand beside their names.
    """
    return tuple(_lines(told, day, say, with_stamps=with_stamps))


def _lines(told: LessonUpdate, day: str, say: Say, *, with_stamps: bool) -> Iterator[Line]:
    if told.went is Went.NEW:
        yield Line(say("updates_lesson_new"))
    elif told.went is Went.BACK:
        yield Line(say("update_lesson_back"))
    elif told.went is Went.GONE:
        yield _gone(told, say)
    else:
        if told.went is Went.RENAMED:
            yield Line(say("update_lesson_renamed"))
        if told.went is Went.MOVED:
            yield Line(say("update_lesson_moved"))
        yield from _changes(told, day, say, with_stamps=with_stamps)
        yield from _languages(told, say)


def _gone(told: LessonUpdate, say: Say) -> Line:
    if told.languages_there:
        return Line(say("update_lesson_gone_here", languages=_named(told.languages_there, say)))
    return Line(say("updates_lesson_gone"))


def _changes(told: LessonUpdate, day: str, say: Say, *, with_stamps: bool) -> Iterator[Line]:
    """Numbers, what to do with film and sheets for them, then the rest."""
    every = told.differences
    numbers = _apart_from_stops(every)
    yield from _numbers(numbers, told, say)
    changed = [one for one in numbers if not one.for_teachers]
    if changed and told.now and told.now.times:
        yield Line(say("update_film"))
    any_number = any(one.kind in _NUMBERS for one in every)  # with its stop or without
    for one in every:
        if one.kind is ChangeKind.SHEETS:
            sheets = _sheets(one, say, with_stamps=with_stamps)
            again = say("update_print_again", day=day, sheets=sheets)
            yield Line(again if any_number else say("update_same_numbers", sheets=sheets))
        elif one.kind not in _NUMBERS | _FILES:
            yield Line(_said(one, told, say))
    yield from _files(every, say)


def _apart_from_stops(every: Iterable[Difference]) -> tuple[Difference, ...]:
    """The numbers that changed, without those that came or went with their whole stop."""
    told = tuple(every)
    moved = {one.stop for one in told if one.kind in _STOPS}
    return tuple(one for one in told if one.kind in _NUMBERS and one.stop not in moved)


def _numbers(numbers: Sequence[Difference], told: LessonUpdate, say: Say) -> Iterator[Line]:
    """A value each; minutes of a move are told to adults alone, in the notes."""
    shown = dict.fromkeys(_said(one, told, say) for one in numbers if not one.for_teachers)
    for text in tuple(shown)[:MOST]:
        yield Line(text, with_numbers=True)
    if len(shown) > MOST:
        yield Line(say("update_numbers_more", n=len(shown) - MOST))
    if any(one.for_teachers for one in numbers):
        yield Line(say("update_minutes"))


def _files(every: Iterable[Difference], say: Say) -> Iterator[Line]:
    """Files of the lesson that are gone or new, together: a lesson at another address has others of each."""
    for kind in (ChangeKind.PAGE_GONE, ChangeKind.PAGE_NEW):
        names = tuple(one_line(page_title(one.name, say)) for one in every if one.kind is kind)
        if names:
            listed = say.listed(names)
            gone = kind is ChangeKind.PAGE_GONE
            yield Line(
                say("updates_page_gone", page=listed)
                if gone
                else say("updates_page_new", page=listed)
            )


def _said(one: Difference, told: LessonUpdate, say: Say) -> str:
    stops = [state.stops.get(one.stop, "") for state in (told.now, told.before) if state]
    return one_line(said(one, next(filter(None, stops), ""), say))


def _sheets(one: Difference, say: Say, *, with_stamps: bool) -> str:
    """Each with its stamp of now and of before, so that a sheet can be held against it."""
    names, was, now = (text.split(",") for text in (one.name, one.was, one.now))
    parts = (
        say("update_stamps", sheet=sheet_title(name, say), now=one_line(new), was=one_line(old))
        if with_stamps
        else sheet_title(name, say)
        for name, old, new in zip(names, was, now, strict=True)
    )
    return say.listed(tuple(parts))


def sheet_title(sheet: str, say: Say) -> str:
    """What a sheet is called; one that this program does not know keeps its own name."""
    return say(SHEET_TITLES[sheet]) if sheet in SHEET_TITLES else one_line(sheet)


def _languages(told: LessonUpdate, say: Say) -> Iterator[Line]:
    if told.languages_new:
        yield Line(say("update_languages_new", languages=_named(told.languages_new, say)))
    if told.languages_gone:
        yield Line(say("update_languages_gone", languages=_named(told.languages_gone, say)))


def _named(languages: Sequence[str], say: Say) -> str:
    return say.listed(tuple(say.language_name(one_line(one)) for one in languages))
