"""The papers of one lesson in one language as files of the site."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING

from generator.model.papers import PaperWord
from generator.present.output import Output
from generator.present.pages.in_lesson import PageInLesson
from generator.present.papers.class_set import ClassSet, class_key, class_sheets
from generator.present.papers.data import as_data
from generator.present.papers.paper import Paper, PaperFile, Size
from generator.present.papers.press import File, Part, Press
from generator.present.words.foreign import unmarked

if TYPE_CHECKING:
    from _typeshed import DataclassInstance


def made_papers(files: Iterable[PaperFile], told: PageInLesson, press: Press) -> Iterator[Output]:
    """Each file; what a template sees is found once for all of them.

    Args:
        files: of the lesson.
        told: what the views of its papers are made from.
        press: makes them.
    """
    parts: dict[Paper, Part] = {}
    for one in files:
        parts |= {
            paper: _part(paper.template, paper.view(told), paper.name, told)
            for paper in one.papers
            if paper not in parts
        }
        file = File(_title(one.title, told), one.size, one.large, one.path)
        yield _output(file, [parts[paper] for paper in one.papers], told, press)


def made_class_set(
    told: PageInLesson, wanted: ClassSet, size: Size, press: Press, *, large: bool
) -> Iterator[Output]:
    """A worksheet for each child of a class, with practice of its own, and one key for all of them.

    Args:
        told: what the views are made from.
        wanted: how many sheets, and their seed.
        size: of the paper.
        press: makes both files.
        large: whether in large print.
    """
    sheets = [
        _part("class_sheet", one, PaperWord.WORKSHEET, told) for one in class_sheets(told, wanted)
    ]
    key = [_part("class_key", class_key(told, wanted), PaperWord.ANSWERS, told)]
    start = f"{told.surround.folder}{told.result.lesson.id}/papers/class-{wanted.children}"
    ending = f"{'-large' if large else ''}-{size.value}.pdf"
    for name, title, parts in (
        ("worksheets", "class_sheets_title", sheets),
        ("answers", "answers_title", key),
    ):
        file = File(_title(title, told), size, large, f"{start}-{name}{ending}")
        yield _output(file, parts, told, press)


def _part(template: str, view: DataclassInstance, sheet: PaperWord, told: PageInLesson) -> Part:
    """A paper; the sheets of a class bear the stamp of the lesson's own, by which it is known again."""
    return Part(template, as_data(view), told.stamps[sheet], told.surround.still_right)


def _title(key: str, told: PageInLesson) -> str:
    return f"{told.surround.say(key)}: {unmarked(told.result.lesson.file.title)}"


def _output(file: File, parts: list[Part], told: PageInLesson, press: Press) -> Output:
    made = press.paper(file, parts, told.surround)
    return Output(file.path, made, source=told.result.lesson.places.file)
