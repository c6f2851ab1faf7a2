"""From an educator's files to every page of the site: the table of contents of the program."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from generator.check import check_lesson
from generator.compute.result import LessonResult
from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.present.site import Output, Presenter
from generator.problems import LessonError, Problem, Weight
from generator.read.handwritten import handwritten_pages
from generator.read.lesson import read_lesson
from generator.read.library import read_library


@dataclass(frozen=True, slots=True)
class Worked:
    """Everything that was read and computed, and what is questionable about it."""

    library: Library
    results: tuple[LessonResult, ...]
    """Lessons in the order of their folders."""
    questions: tuple[Problem, ...]
    """Problems the site can be built with."""


def work(root: Path, only: str | None = None) -> Worked:
    """Read, check and compute the lessons; nothing is written.

    Args:
        root: folder of the site, the one that holds ``lessons/``.
        only: id of the one lesson wanted, or all of them.

    Raises:
        LessonError: with every problem of every file, when at least one must be put right.
    """
    library = read_library(root)
    problems: list[Problem] = []
    lessons: list[Lesson] = []
    for path in lesson_files(root, only):
        read = read_lesson(root, path, library)
        if isinstance(read, Lesson):
            lessons.append(read)
        else:
            problems += read
    results = tuple(work_out(lesson, library) for lesson in lessons)
    problems += [problem for result in results for problem in check_lesson(result)]
    if any(problem.weight is Weight.MUST for problem in problems):
        raise LessonError(problems)
    return Worked(library, results, tuple(problems))


@dataclass(frozen=True, slots=True)
class Built:
    """A site in memory, whole but for the hand-written pages."""

    worked: Worked
    presenter: Presenter
    """Makes the front page and the hand-written pages wear the same theme."""
    outputs: tuple[Output, ...]
    """Every page and file, in the order they are written."""


def build(root: Path, *, preview: bool = False) -> Built:
    """Make every page of the site; nothing is written.

    Args:
        root: folder of the site.
        preview: whether the pages are for the educator's own machine, where a reload script runs.

    Raises:
        LessonError: as ``work``.
    """
    worked = work(root)
    presenter = Presenter(root, worked.library, handwritten_pages(root), preview=preview)
    outputs = [output for result in worked.results for output in presenter.lesson(result)]
    return Built(worked, presenter, (*outputs, *presenter.assets()))


def lesson_files(root: Path, only: str | None = None) -> tuple[str, ...]:
    """The lesson files below ``lessons/``, in order, relative to the root."""
    files = sorted((root / "lessons").glob(f"{only or '*'}/lesson.yaml"))
    return tuple(file.relative_to(root).as_posix() for file in files)
