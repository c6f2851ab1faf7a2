"""The papers of lessons as files in a folder, without building the site."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

from generator.making import Surroundings, in_languages
from generator.present.lesson import LessonInLanguage
from generator.present.output import Output
from generator.present.papers.class_set import MOST, SIZES, ClassSet
from generator.present.papers.made import made_class_set, made_papers
from generator.present.papers.paper import Size
from generator.present.papers.table import every_paper
from generator.problems import LessonError, Weight
from generator.steps.library import checked_library
from generator.steps.surroundings import surroundings
from generator.steps.work import lesson_ids, work_lesson
from generator.write.whole import write_bytes_whole

__all__ = ["MOST", "SIZES", "ClassSet", "Size", "papers_of", "write_papers"]


def papers_of(
    root: Path,
    lessons: Sequence[str] = (),
    sizes: Sequence[Size] = tuple(Size),
    prints: Sequence[bool] = (False,),
    class_set: ClassSet | None = None,
) -> Iterator[Output]:
    """Every paper of lessons, whichever of them the site makes, in every language; one by one.

    Args:
        root: folder of the site.
        lessons: their folders' names; all lessons without one.
        sizes: of the paper.
        prints: whether in large print; both for both.
        class_set: makes the worksheets of a class and their key instead.

    Raises:
        LessonError: something in the library or in a lesson must be put right.
    """
    for lesson, around in _in_languages(root, lessons or lesson_ids(root)):
        for large in prints:
            for size in sizes:
                if class_set:
                    yield from made_class_set(
                        lesson.told, class_set, size, around.press, large=large
                    )
                else:
                    files = every_paper(lesson.result, lesson.surround.folder, size, large=large)
                    yield from made_papers(files, lesson.told, around.press)


def write_papers(papers: Iterable[Output], into: Path) -> Iterator[Path]:
    """Write each paper in a folder, by its path on the site; each is whole or not there at all.

    Raises:
        OSError: one cannot be written.
    """
    for one in papers:
        file = into / one.path
        file.parent.mkdir(parents=True, exist_ok=True)
        yield write_bytes_whole(file, one.content)


def _in_languages(
    root: Path, lessons: Sequence[str]
) -> Iterator[tuple[LessonInLanguage, Surroundings]]:
    """Each lesson in each of its languages, once all of them are right."""
    library = checked_library(root)
    around = surroundings(root, library)
    worked = [work_lesson(root, f"lessons/{name}/lesson.yaml", library) for name in lessons]
    if problems := [one for made in worked for one in made.problems if one.weight is Weight.MUST]:
        raise LessonError(problems)
    for made in worked:
        for lesson in in_languages(made.results, around):
            yield lesson, around
