"""Every paper of a lesson, one entry each, in the order a teacher uses them: files and links read this."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from generator.compute.result import LessonResult
from generator.model.papers import PaperWord, papers_named
from generator.present.pages.page import Build, Surround
from generator.present.pages.page_of_lesson import Reader
from generator.present.pages.paper import answers_view, worksheet_view
from generator.present.papers.cards import cards_paper
from generator.present.papers.family import family_view
from generator.present.papers.notes import notes_paper
from generator.present.papers.paper import Paper, PaperFile, Size
from generator.present.words.families import PAPER_SIZE


def _with_moves(result: LessonResult) -> bool:
    return bool(result.moved)


def _every(_: LessonResult) -> bool:
    return True


# The same stands on the same line of every entry.
# fmt: off
PAPERS: tuple[Paper, ...] = (
    Paper(
        name=PaperWord.NOTES, view=notes_paper, template="notes",
        title="notes_title", reader=Reader.TEACHER, has=_every,
    ),
    Paper(
        name=PaperWord.WORKSHEET, view=worksheet_view, template="sheet",
        title="worksheet_title", reader=Reader.FAMILY, has=_every,
    ),
    Paper(
        name=PaperWord.ANSWERS, view=answers_view, template="sheet",
        title="answers_title", reader=Reader.FAMILY, has=_every,
    ),
    Paper(
        name=PaperWord.CARDS, view=cards_paper, template="cards",
        title="cards_title", reader=Reader.FAMILY, has=_with_moves,
    ),
    Paper(
        name=PaperWord.FAMILY, view=family_view, template="family",
        title="family_title", reader=Reader.FAMILY, has=_every,
    ),
)
# fmt: on
PACKET = "packet_title"
"""Key of the title of all papers of a lesson in one file."""
_SIZES = {PaperWord.A4: Size.A4, PaperWord.LETTER: Size.LETTER}


def lesson_papers(result: LessonResult, surround: Surround) -> tuple[PaperFile, ...]:
    """The files that a lesson's papers are on the site; none in a preview."""
    if Build.PUBLISHED not in surround.builds:
        return ()
    wanted = surround.site.papers
    named = papers_named(wanted)
    sizes = _sizes(wanted)
    prints = (False, True) if PaperWord.LARGE in wanted else (False,)
    return tuple(
        one
        for large in prints
        for size in sizes
        for one in every_paper(result, surround.folder, size, large=large)
        if one.name in named
    )


def packets(lesson: str, surround: Surround) -> Iterator[tuple[str, str]]:
    """The packets of a lesson on the site: what each size of paper is called, and the file's path.

    Args:
        lesson: its folder from the site's root.
        surround: of its language.
    """
    wanted = surround.site.papers
    if Build.PUBLISHED not in surround.builds or PaperWord.PACKET not in papers_named(wanted):
        return
    for size in _sizes(wanted):
        name = surround.say(PAPER_SIZE.key(size.value))
        yield name, _path(lesson, PaperWord.PACKET, size, large=False)


def _sizes(wanted: Collection[PaperWord]) -> tuple[Size, ...]:
    """The sizes of paper a site keeps to; both where it names none."""
    return tuple(size for word, size in _SIZES.items() if word in wanted) or tuple(Size)


def every_paper(
    result: LessonResult, folder: str, size: Size, *, large: bool
) -> Iterator[PaperFile]:
    """Every paper that a lesson can have in a size, whatever its site makes; the packet last.

    Args:
        result: the lesson.
        folder: of its language on the site: ``es/``, or nothing.
        size: of the paper.
        large: whether in large print.
    """
    lesson, papers = f"{folder}{result.lesson.id}", tuple(one for one in PAPERS if one.has(result))
    for one in papers:
        path = _path(lesson, one.name, size, large=large)
        yield PaperFile(one.name, one.title, (one,), size, large, path)
    path = _path(lesson, PaperWord.PACKET, size, large=large)
    yield PaperFile(PaperWord.PACKET, PACKET, papers, size, large, path)


def _path(lesson: str, name: PaperWord, size: Size, *, large: bool) -> str:
    return f"{lesson}/papers/{name}{'-large' if large else ''}-{size.value}.pdf"
