"""From an educator's files to every page of the site: the table of contents of the program."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from generator.check import check_lesson
from generator.compute.result import LessonResult
from generator.compute.trace import trace
from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.present.reference import reference_page
from generator.present.schema import lesson_schema
from generator.present.site import Output, Presenter
from generator.present.trace_text import trace_json, trace_lines
from generator.problems import LessonError, Problem, Weight
from generator.read.handwritten import handwritten_pages
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from generator.write.new_lesson import new_lesson
from generator.write.swap import replaced


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


def write_site(root: Path, write: Callable[[Path], None]) -> Path:
    """Let ``write`` fill an empty folder, and put it in the place of ``site/`` when that went well."""
    site = root / "site"
    with replaced(site) as folder:
        write(folder)
    return site


def trace_text(root: Path, lesson: str, *, as_json: bool) -> str:
    """Where every number of a lesson comes from, to read or as JSON.

    Raises:
        LessonError: as ``work``.
    """
    figures = trace(work(root, lesson).results[0])
    return trace_json(figures) if as_json else "\n".join(trace_lines(figures))


def begin_lesson(root: Path, title: str) -> Path:
    """Make a new lesson from the starter file; returns its lesson file.

    Raises:
        LessonError: when no folder can be made for the title.
    """
    return new_lesson(root, title)


def write_reference(root: Path) -> tuple[Path, ...]:
    """Write the lesson file's JSON Schema and its reference page; returns both files."""
    written = {root / "site_data/lesson.schema.json": lesson_schema(), root / "lessons/guide/lesson-file.md": reference_page()}
    for file, text in written.items():
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, "utf-8")
    return tuple(written)


def lesson_ids(root: Path) -> tuple[str, ...]:
    """Names of the lesson folders, in order."""
    return tuple(Path(file).parent.name for file in lesson_files(root))


def lesson_files(root: Path, only: str | None = None) -> tuple[str, ...]:
    """The lesson files below ``lessons/``, in order, relative to the root."""
    shown = "[!.]*"  # MkDocs leaves hidden folders out too
    files = sorted((root / "lessons").glob(f"{only or shown}/lesson.yaml"))
    return tuple(file.relative_to(root).as_posix() for file in files)
