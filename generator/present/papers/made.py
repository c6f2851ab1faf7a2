"""The papers of one lesson in one language as files of the site."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from generator.present.output import Output
from generator.present.pages.in_lesson import PageInLesson
from generator.present.papers.data import Data
from generator.present.papers.paper import Paper, PaperFile
from generator.present.papers.press import Press, seen


def made_papers(files: Iterable[PaperFile], told: PageInLesson, press: Press) -> Iterator[Output]:
    """Each file; what a template sees is found once for all of them.

    Args:
        files: of the lesson.
        told: what the views of its papers are made from.
        press: makes them.
    """
    views: dict[Paper, Data] = {}
    for file in files:
        views |= {paper: seen(paper, told) for paper in file.papers if paper not in views}
        yield Output(
            file.path, press.paper(file, views, told), source=told.result.lesson.places.file
        )
