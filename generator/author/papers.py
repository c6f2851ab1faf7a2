"""The papers of lessons as files in a folder, without building the site."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

from generator.making import Surroundings, in_languages
from generator.present.lesson import LessonInLanguage
from generator.present.output import Output
from generator.present.papers.made import made_papers
from generator.present.papers.paper import Size
from generator.present.papers.table import every_paper
from generator.problems import LessonError, Weight
from generator.steps.library import checked_library
from generator.steps.surroundings import surroundings
from generator.steps.work import lesson_ids, work_lesson


def papers_of(
    root: Path,
    lessons: Sequence[str] = (),
    sizes: Sequence[Size] = tuple(Size),
    prints: Sequence[bool] = (False,),
) -> Iterator[Output]:
    """Every paper of lessons, whichever of them the site makes, in every language; one by one.

    Args:
        root: folder of the site.
        lessons: their folders' names; all lessons without one.
        sizes: of the paper.
        prints: whether in large print; both for both.

    Raises:
        LessonError: something in the library or in a lesson must be put right.
    """
    for lesson, around in _in_languages(root, lessons or lesson_ids(root)):
        folder = lesson.surround.folder
        for large in prints:
            for size in sizes:
                files = every_paper(lesson.result, folder, size, large=large)
                yield from made_papers(files, lesson.told, around.press)


def _in_languages(
    root: Path, lessons: Sequence[str]
) -> Iterator[tuple[LessonInLanguage, Surroundings]]:
    library = checked_library(root)
    around = surroundings(root, library)
    for name in lessons:
        worked = work_lesson(root, f"lessons/{name}/lesson.yaml", library)
        if not worked.results:
            raise LessonError(one for one in worked.problems if one.weight is Weight.MUST)
        for lesson in in_languages(worked.results, around):
            yield lesson, around
