"""Every page of a lesson, one entry each: links, copies, lists of what to keep and the notes read this."""

from __future__ import annotations

from dataclasses import replace

from generator.compute.result import LessonResult
from generator.present.pages.embed import embed_view
from generator.present.pages.in_lesson import LessonLinks, PageInLesson
from generator.present.pages.lesson_page import lesson_view
from generator.present.pages.notes import notes_view
from generator.present.pages.page import Build, Look, Surround
from generator.present.pages.page_of_lesson import LessonPage, Reader
from generator.present.pages.paper import answers_view, cards_view, worksheet_view
from generator.present.pages.practice import practice_view
from generator.present.pages.projector import projector_view
from generator.present.pages.transcript import transcript_view
from generator.present.policy import FRAMED
from generator.present.recording.numbers import numbers_view
from generator.present.recording.pack import pack_view, script_view, slides_view
from generator.present.views.page import LinkView, PageView, View

_ALWAYS = frozenset({Build.PREVIEW, Build.PUBLISHED})
_FILMING = frozenset({Build.FILMING})
_LESSON = Look(("screen",), "lesson-{locale}")
"""What is below its first screen is linked there."""
_READING = Look(("screen", "below", "reading"))
_PAPER = Look(("paper",), "paper")
_PRACTICE = Look(("screen", "below", "play"), "play-{locale}")
_PROJECTOR = Look(("screen", "below", "projector"), "projector-{locale}")
_EMBED = Look(("screen", "below", "embed"), "embed-{locale}")
_SHEETS = Look(("screen", "below", "stamps"))
_PACK = Look(("recording",), "recording")


def _every(_: LessonResult) -> bool:
    return True


def _with_moves(result: LessonResult) -> bool:
    return bool(result.moved)


def _with_captions(result: LessonResult) -> bool:
    return bool(result.lesson.captions)


def _sheets(told: PageInLesson) -> View:
    from generator.present.stamps.sheets import sheets_view  # noqa: PLC0415  # it calls pages as this table does

    return sheets_view(told)


# The same stands on the same line of every entry.
# fmt: off
PAGES: tuple[LessonPage, ...] = (
    LessonPage(
        name="index.html", view=lesson_view, has=_every,
        title="", link="back_to_lesson", look=_LESSON,
        reader=Reader.FAMILY, printed=False, searched=True,
        builds=_ALWAYS, framed=False, in_copy=True, offline=True,
    ),
    LessonPage(
        name="cards.html", view=cards_view, has=_with_moves,
        title="cards_title", link="cards_title", look=_PAPER,
        reader=Reader.FAMILY, printed=True, searched=True,
        builds=_ALWAYS, framed=False, in_copy=True, offline=True,
    ),
    LessonPage(
        name="worksheet.html", view=worksheet_view, has=_every,
        title="worksheet_title", link="worksheet_title", look=_PAPER,
        reader=Reader.FAMILY, printed=True, searched=True,
        builds=_ALWAYS, framed=False, in_copy=True, offline=True,
    ),
    LessonPage(
        name="answers.html", view=answers_view, has=_every,
        title="answers_title", link="answers_title", look=_PAPER,
        reader=Reader.FAMILY, printed=True, searched=True,
        builds=_ALWAYS, framed=False, in_copy=True, offline=True,
    ),
    LessonPage(
        name="practice.html", view=practice_view, has=_every,
        title="practice_title", link="practice_title", look=_PRACTICE,
        reader=Reader.FAMILY, printed=True, searched=True,
        builds=_ALWAYS, framed=False, in_copy=True, offline=True,
    ),
    LessonPage(
        name="transcript.html", view=transcript_view, has=_with_captions,
        title="transcript_title", link="transcript_link", look=_READING,
        reader=Reader.FAMILY, printed=False, searched=True,
        builds=_ALWAYS, framed=False, in_copy=True, offline=True,
    ),
    LessonPage(
        name="notes.html", view=notes_view, has=_every,
        title="notes_title", link="notes_title", look=_READING,
        reader=Reader.TEACHER, printed=False, searched=False,
        builds=_ALWAYS, framed=False, in_copy=True, offline=True,
    ),
    LessonPage(
        name="sheets.html", view=_sheets, has=_every,
        title="sheets_title", link="sheets_title", look=_SHEETS,
        reader=Reader.HOLDER, printed=False, searched=False,
        builds=_ALWAYS, framed=False, in_copy=False, offline=False,
    ),
    LessonPage(
        name="stop.html", view=embed_view, has=_every,
        title="embed_title", link="embed_title", look=_EMBED,
        reader=Reader.ELSEWHERE, printed=False, searched=False,
        builds=_ALWAYS, framed=True, in_copy=False, offline=False,
    ),
    LessonPage(
        name="projector.html", view=projector_view, has=_every,
        title="projector_title", link="projector_link", look=_PROJECTOR,
        reader=Reader.CLASS, printed=False, searched=False,
        builds=_ALWAYS, framed=False, in_copy=True, offline=True,
    ),
    LessonPage(
        name="recording/index.html", view=pack_view, has=_every,
        title="recording_title", link="recording_title", look=_PACK,
        reader=Reader.EDUCATOR, printed=False, searched=False,
        builds=_FILMING, framed=False, in_copy=False, offline=False,
    ),
    LessonPage(
        name="recording/numbers.html", view=numbers_view, has=_every,
        title="recording_numbers", link="recording_numbers", look=_PACK,
        reader=Reader.EDUCATOR, printed=False, searched=False,
        builds=_FILMING, framed=False, in_copy=False, offline=False,
    ),
    LessonPage(
        name="recording/script.html", view=script_view, has=_every,
        title="recording_script", link="recording_script", look=_PACK,
        reader=Reader.EDUCATOR, printed=False, searched=False,
        builds=_FILMING, framed=False, in_copy=False, offline=False,
    ),
    LessonPage(
        name="recording/slides.html", view=slides_view, has=_every,
        title="recording_slides", link="recording_slides", look=_PACK,
        reader=Reader.EDUCATOR, printed=False, searched=False,
        builds=_FILMING, framed=False, in_copy=False, offline=False,
    ),
)
# fmt: on
START = PAGES[0]
"""The lesson itself."""
SHEETS = next(one for one in PAGES if one.reader is Reader.HOLDER)
"""What became of its sheets: made once the stamps of all others are known."""


def lesson_pages(result: LessonResult, builds: frozenset[Build]) -> tuple[LessonPage, ...]:
    """The pages a lesson has where these builds are made."""
    return tuple(one for one in PAGES if one.builds & builds and one.has(result))


def page_path(one: LessonPage, result: LessonResult, surround: Surround) -> str:
    """Where a page of a lesson stands, from the site's root."""
    folder = f"{surround.folder}{result.lesson.id}"
    return f"{FRAMED if one.framed else ''}{folder}/{one.name}"


def lesson_links(result: LessonResult, surround: Surround) -> LessonLinks:
    """The pages of a lesson as its other pages link to them."""
    pages = lesson_pages(result, surround.builds)

    def links(reader: Reader, *, printed: bool) -> tuple[LinkView, ...]:
        return tuple(
            LinkView(page_path(one, result, surround), surround.say(one.link))
            for one in pages
            if one.reader is reader and one.printed is printed and one is not START
        )

    return LessonLinks(
        lesson=LinkView(page_path(START, result, surround), surround.say(START.link)),
        paper=links(Reader.FAMILY, printed=True),
        screens=links(Reader.FAMILY, printed=False),
        teachers=links(Reader.TEACHER, printed=False) + links(Reader.TEACHER, printed=True),
        whole_class=links(Reader.CLASS, printed=False),
        filming=links(Reader.EDUCATOR, printed=False) + links(Reader.EDUCATOR, printed=True),
    )


def page_around(one: LessonPage, result: LessonResult, surround: Surround) -> PageView:
    """What stands around the content of a lesson's page."""
    lesson, file = result.lesson, result.lesson.file
    page = surround.page(
        f"{lesson.id}/{one.name}",
        f"{surround.say(one.title)}: {file.title}" if one.title else file.title,
        file.summary,
        look=one.look,
        searched=one.searched,
    )
    page = replace(page, formerly=" ".join(file.formerly))
    # The educator films in the language she works in, and the pack's style has no room for others.
    return replace(page, languages=()) if one.reader is Reader.EDUCATOR else page
