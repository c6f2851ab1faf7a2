"""What changed in a lesson, in the words of the site: for the page *Updates*, its feed, and ``changes``."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import PurePosixPath

from generator.model.published import LessonState, PublishedNumber
from generator.present.pages.table import PAGES
from generator.present.papers.table import PACKET, PAPERS
from generator.present.updates.differences import ChangeKind, Difference, differences
from generator.present.words.numbers_named import BARE, number_name, number_said
from generator.present.words.say import Say

SHEET_TITLES = {
    "worksheet": "worksheet_title",
    "answers": "answers_title",
    "cards": "cards_title",
    "practice": "practice_title",
    "notes": "notes_title",
    "family": "family_title",
    "lesson": "updates_sheet_lesson",
    "projector": "projector_title",
}
"""Key of what each sheet is called, by its name in a state."""
_SENTENCES = {
    ChangeKind.LESSON_GONE: "updates_lesson_gone",
    ChangeKind.LESSON_NEW: "updates_lesson_new",
    ChangeKind.STOP_GONE: "updates_stop_gone",
    ChangeKind.STOP_NEW: "updates_stop_new",
    ChangeKind.STOP_ADDRESS: "updates_stop_address",
    ChangeKind.NAME: "updates_name",
    ChangeKind.STOP_NAME: "updates_stop_name",
    ChangeKind.TITLE: "updates_title",
    ChangeKind.PAGE_GONE: "updates_page_gone",
    ChangeKind.PAGE_NEW: "updates_page_new",
    ChangeKind.ORDER: "updates_order",
    ChangeKind.ROWS: "updates_rows",
    ChangeKind.TEXTS: "updates_texts",
}
_FOR_PEOPLE = {".html", ".pdf", ".zip", ".imscc"}
"""Files that somebody opens; others are fetched by pages alone."""
_PAGE_TITLES = {one.name: one.title or one.link for one in PAGES}
_PAPER_TITLES = {one.name.value: one.title for one in PAPERS} | {"packet": PACKET}


@dataclass(frozen=True, slots=True)
class SaidChange:
    """One sentence about a change."""

    kind: ChangeKind
    text: str
    """A whole sentence."""
    stop: str = ""
    """Id of the stop it stands at; empty for the whole lesson."""
    for_teachers: bool = False
    """Whether it concerns the teaching notes alone."""


def said_changes(
    old: LessonState | None, new: LessonState | None, say: Say
) -> tuple[SaidChange, ...]:
    """What changed, what matters most first; nothing where both say the same.

    Args:
        old: the lesson before; nothing where it was not there.
        new: the lesson now, likewise.
        say: the words they are said in.
    """
    headings = (dict(old.stops) if old else {}) | (dict(new.stops) if new else {})
    found = (
        SaidChange(one.kind, said(one, headings.get(one.stop, ""), say), one.stop, one.for_teachers)
        for one in differences(old, new)
        if is_for_people(one)
    )
    return tuple(dict.fromkeys(found))


def is_for_people(one: Difference) -> bool:
    """Whether somebody outside could notice it; a file that pages fetch by themselves is not."""
    page = one.kind in {ChangeKind.PAGE_GONE, ChangeKind.PAGE_NEW}
    return not page or PurePosixPath(one.name).suffix in _FOR_PEOPLE


def said(one: Difference, heading: str, say: Say) -> str:
    """One change as a sentence.

    Args:
        one: the change.
        heading: of its stop.
        say: the words.
    """
    match one.kind:
        case ChangeKind.NUMBER | ChangeKind.NUMBER_GONE | ChangeKind.NUMBER_NEW:
            return _said_number(one, heading, say)
        case ChangeKind.SHEETS:
            return say("updates_sheets", sheets=_sheets(one, say))
        case ChangeKind.TIME:
            return _said_time(one, heading, say)
        case ChangeKind.PAGE_GONE | ChangeKind.PAGE_NEW:
            return say(_SENTENCES[one.kind], page=page_title(one.name, say))
        case _:
            return say(_SENTENCES[one.kind], stop=heading, was=one.was, now=one.now)


def page_title(name: str, say: Say) -> str:
    """What a file of a lesson is called; its own name where it has no title."""
    if key := _PAGE_TITLES.get(name):
        return say(key)
    path = PurePosixPath(name)
    key = _PAPER_TITLES.get(path.name.partition("-")[0])
    return f"{say(key)} ({path.name})" if key and path.suffix == ".pdf" else name


def _said_number(one: Difference, heading: str, say: Say) -> str:
    if one.old and one.new:
        if one.new.kind not in BARE and one.old.of != one.new.of:
            return _said_of_another(one.old, one.new, heading, say)
        return say(
            "updates_number",
            what=_begun(number_name(one.new, heading, say)),
            now=number_said(one.new, say),
            was=number_said(one.old, say),
        )
    if one.new:
        what, value = number_name(one.new, heading, say), number_said(one.new, say)
        return say("updates_number_new", what=what, value=value)
    assert one.old  # noqa: S101  # of the three kinds that come here
    what, value = number_name(one.old, heading, say), number_said(one.old, say)
    return say("updates_number_gone", what=what, value=value)


def _said_of_another(old: PublishedNumber, new: PublishedNumber, heading: str, say: Say) -> str:
    """Two numbers of two things, such as a row with another food than before: no correction of either."""
    return say(
        "update_number_of_another",
        what=_begun(number_name(new, heading, say)),
        now=number_said(new, say),
        what_was=number_name(old, heading, say),
        was=number_said(old, say),
    )


def _begun(name: str) -> str:
    """A name that begins a sentence."""
    return name[:1].upper() + name[1:]


def _said_time(one: Difference, heading: str, say: Say) -> str:
    if not one.now:
        return say("updates_time_gone", stop=heading, was=one.was)
    if not one.was:
        return say("updates_time_new", stop=heading, now=one.now)
    return say("updates_time", stop=heading, was=one.was, now=one.now)


def _sheets(one: Difference, say: Say) -> str:
    """``Worksheet (K7Q2FM), Answer key (M2RT4D)``: with the stamps that are printed on old ones."""
    pairs = zip(one.name.split(","), one.was.split(","), strict=True)
    return ", ".join(f"{say(SHEET_TITLES[sheet])} ({stamp})" for sheet, stamp in pairs)
