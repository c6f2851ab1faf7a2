"""The sheets of a lesson that were printed before, and which of their numbers are others now."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from generator.model.published import LessonState, PublishedNumber
from generator.present.updates.differences import ChangeKind, Difference, differences
from generator.present.updates.said import said
from generator.present.words.say import Say

_NUMBERS = {ChangeKind.NUMBER, ChangeKind.NUMBER_GONE, ChangeKind.NUMBER_NEW}
_MOVED = (ChangeKind.NUMBER_GONE, ChangeKind.NUMBER_NEW)
_FOR_ADULTS = "notes"
"""The one sheet that bears the numbers for teachers alone."""


@dataclass(frozen=True, slots=True)
class PastSheet:
    """A sheet of a lesson in one language that prints something else now, or is made no more."""

    stamp: str
    sheet: str
    """``worksheet``, ``family``."""
    since: str
    """When it first went out, as ``2026-11-26T17:03:00Z``."""
    until: str
    """When another one went out in its place; empty where that has not gone out yet."""
    state: LessonState
    """What the lesson said when it went out last."""


def past_sheets(
    states: Iterable[LessonState], language: str, now: Mapping[str, str]
) -> tuple[PastSheet, ...]:
    """The sheets that were published and hold no more, the newest first.

    Args:
        states: what was published of the lesson, the oldest first.
        language: of the sheets.
        now: the stamps of today by sheet.
    """
    own = [one for one in states if one.language == language]
    last = {
        (sheet, stamp): at for at, state in enumerate(own) for sheet, stamp in state.stamps.items()
    }
    first = {
        key: state.at for state in reversed(own) for key in state.stamps.items()
    }  # the oldest is looked at last
    found = [
        PastSheet(
            stamp,
            sheet,
            since=first[sheet, stamp],
            until=own[at + 1].at if at + 1 < len(own) else "",
            state=own[at],
        )
        for (sheet, stamp), at in last.items()
        if now.get(sheet) != stamp
    ]
    return tuple(sorted(found, key=lambda one: (one.state.at, one.since), reverse=True))


def changed_numbers(past: PastSheet, now: LessonState, say: Say) -> tuple[str, ...]:
    """Which numbers of the lesson are others than when a sheet went out, a sentence each.

    Args:
        past: the sheet.
        now: what the lesson says today; nothing is asked of it but its numbers and headings.
        say: the words of the sheet's language.
    """
    headings = {**past.state.stops, **now.stops}
    numbers = [one for one in differences(past.state, now) if one.kind in _NUMBERS]
    gone, new = ({_told(one) for one in numbers if one.kind is kind} for kind in _MOVED)
    found = (
        said(one, headings.get(one.stop, ""), say)
        for one in numbers
        if past.sheet == _FOR_ADULTS or not one.for_teachers
        if one.kind not in _MOVED or _told(one) not in gone & new
    )
    return tuple(dict.fromkeys(found))


def _told(one: Difference) -> PublishedNumber | None:
    """The number that is gone or new: where both are the same of the same thing, it stands elsewhere and is right."""
    return one.old or one.new
