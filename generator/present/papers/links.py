"""What pages say of the papers that are there as files: which there are, and how large each is."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from fractions import Fraction
from itertools import groupby

from generator.compute.rounding import whole
from generator.model.papers import PaperWord
from generator.present.papers.paper import PaperFile
from generator.present.views.page import LinkView
from generator.present.views.paper_files import PacketView, PaperFilesView, PaperLinksView
from generator.present.words.families import PAPER_SIZE
from generator.present.words.say import Say

Sizes = Mapping[PaperFile, int]
"""Each file with its bytes."""
NOTES = "notes.html"
_ON_PAGE: Mapping[str, frozenset[PaperWord]] = {
    "worksheet.html": frozenset({PaperWord.WORKSHEET, PaperWord.PACKET}),
    "answers.html": frozenset({PaperWord.ANSWERS, PaperWord.PACKET}),
    "cards.html": frozenset({PaperWord.CARDS, PaperWord.PACKET}),
    NOTES: frozenset(PaperWord),
}
"""By the name of a page, the papers it links to: itself as a file, and all in one."""
_KILOBYTE = 1000


def papers_on_page(page: str, files: Sizes, say: Say) -> Iterator[PaperFilesView | PacketView]:
    """What a page of a lesson links to; nothing where the site makes none of it.

    Args:
        page: its name in the lesson's folder.
        files: all that the lesson has in the page's language.
        say: the words of the page.
    """
    papers = tuple(_papers(files, _ON_PAGE.get(page, frozenset()), say))
    if papers:
        yield PaperFilesView(papers)
    if page == NOTES and (packet := tuple(_packet(files, say))):
        yield PacketView(packet, say.language_name(say.language))


def _packet(files: Sizes, say: Say) -> Iterator[LinkView]:
    """In usual letters: a teacher with five minutes wants few links."""
    for one, size in files.items():
        if one.name is PaperWord.PACKET and not one.large:
            paper = say(PAPER_SIZE.key(one.size.value))
            label = say("paper_file_short", paper=paper, size=_kilobytes(size, say))
            yield LinkView(one.path, label)


def _papers(files: Sizes, wanted: Collection[PaperWord], say: Say) -> Iterator[PaperLinksView]:
    """Each paper with all its files, in the order of the files."""
    some = [one for one in files if one.name in wanted]
    names = dict.fromkeys(one.name for one in some)
    ordered = sorted(some, key=lambda one: [*names].index(one.name))
    for title, group in groupby(ordered, key=lambda one: one.title):
        links = tuple(LinkView(one.path, _label(one, files[one], say)) for one in group)
        yield PaperLinksView(say(title), links)


def _label(file: PaperFile, size: int, say: Say) -> str:
    """``PDF, A4, English, 46 kB``."""
    return say(
        "paper_file_large_print" if file.large else "paper_file_print",
        paper=say(PAPER_SIZE.key(file.size.value)),
        language=say.language_name(say.language),
        size=_kilobytes(size, say),
    )


def _kilobytes(size: int, say: Say) -> str:
    return say.number(max(1, whole(Fraction(size, _KILOBYTE))))
