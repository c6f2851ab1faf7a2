"""What pages say of the papers that are there as files: which there are, and how large each is."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from itertools import groupby

from generator.model.papers import PaperWord
from generator.present.papers.paper import PaperFile
from generator.present.views.page import LinkView
from generator.present.views.paper_files import PaperFilesView, PaperLinksView
from generator.present.words.families import PAPER_SIZE
from generator.present.words.say import Say

Sizes = Mapping[PaperFile, int]
"""Each file with its bytes."""
_KILOBYTE = 1000


def paper_files(files: Sizes, wanted: Collection[PaperWord], say: Say) -> PaperFilesView | None:
    """Links to the files of some papers; nothing where the site makes none of them."""
    ordered = sorted(files, key=lambda one: list(PaperWord).index(one.name))
    some = (one for one in ordered if one.name in wanted)
    papers = tuple(_papers(some, files, say))
    return PaperFilesView(papers) if papers else None


def _papers(some: Iterator[PaperFile], files: Sizes, say: Say) -> Iterator[PaperLinksView]:
    for title, group in groupby(some, key=lambda one: one.title):
        links = tuple(LinkView(one.path, _label(one, files[one], say)) for one in group)
        yield PaperLinksView(say("paper_file", title=say(title)), links)


def _label(file: PaperFile, size: int, say: Say) -> str:
    """``PDF, A4, English, 46 kB``."""
    return say(
        "paper_file_large_print" if file.large else "paper_file_print",
        paper=say(PAPER_SIZE.key(file.size.value)),
        language=say.language_name(say.language),
        size=say.number(max(1, round(size / _KILOBYTE))),
    )
