"""Lessons read, computed and checked: all that is known of them before a page is made."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from generator.carried import theme_of
from generator.check import check_lesson, check_site, check_words
from generator.check.former_names import former_names_apart
from generator.check.listed import Listed
from generator.compute.lacking_names import LackingName, lacking_names
from generator.compute.result import LessonResult
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.texts import in_language
from generator.present.words import foreign
from generator.problems import LessonError, Problem, Weight
from generator.read.lesson import read_lesson
from generator.read.site_folder import folder_problems
from generator.steps.filled import worked_out
from generator.steps.library import checked_library
from generator.steps.surroundings import refuse_half_made

Mark = Callable[[str], str]
"""What is made of a text that a translation lacks."""


@dataclass(frozen=True, slots=True)
class WorkedLesson:
    """One lesson that was read and computed, and what is questionable about it."""

    results: Mapping[str, LessonResult]
    """By language, its own first; missing and stale texts of a translation are marked. Nothing
    where something must be put right."""
    problems: tuple[Problem, ...]


@dataclass(frozen=True, slots=True)
class Worked:
    """Everything that was read and computed, and what is questionable about it."""

    library: Library
    results: tuple[LessonResult, ...]
    """Lessons in the order of their folders, in the language they are written in."""
    translated: Mapping[str, tuple[LessonResult, ...]]
    """By other language: the lessons that have a translation, missing and stale texts marked."""
    questions: tuple[Problem, ...]
    """Problems the site can be built with."""

    def lessons(self, language: str) -> tuple[LessonResult, ...]:
        """The lessons a language has."""
        first = self.library.site.languages[0]
        return self.results if language == first else self.translated[language]


def work(root: Path, only: str | None = None) -> Worked:
    """Read, check and compute the lessons; nothing is written.

    Args:
        root: folder of the site, the one that holds ``lessons/``.
        only: id of the one lesson wanted, or all of them.

    Raises:
        LessonError: with every problem of every file, when at least one must be put right.
    """
    library = checked_library(root)
    refuse_half_made(Path(theme_of(root)), library)
    worked = [work_lesson(root, path, library) for path in lesson_files(root, only)]
    problems = [problem for one in worked for problem in one.problems]
    problems += check_site(library, *names_and_listed(worked))
    problems += former_names_apart(names_and_listed(worked)[1])
    if any(problem.weight is Weight.MUST for problem in problems):
        raise LessonError(problems)
    first, *others = library.site.languages
    return Worked(
        library,
        tuple(one.results[first] for one in worked),
        {
            other: tuple(one.results[other] for one in worked if other in one.results)
            for other in others
        },
        tuple(problems),
    )


def names_and_listed(
    worked: Iterable[WorkedLesson],
) -> tuple[list[LackingName], list[Listed]]:
    """The names that lessons lack, in every language; and what the lists of lessons ask of each."""
    results = [one.results for one in worked if one.results]
    lacking = [name for one in results for result in one.values() for name in lacking_names(result)]
    lessons = [next(iter(one.values())).lesson for one in results]
    return lacking, [listed_of(one) for one in lessons]


def listed_of(lesson: Lesson) -> Listed:
    """What the lists of lessons ask of one, with the places in its file."""
    file, at = lesson.file, lesson.places.at
    return Listed(
        file.title,
        at("title"),
        file.order,
        at("order"),
        lesson.id,
        tuple((name, at("formerly", index)) for index, name in enumerate(file.formerly)),
    )


def work_lesson(root: Path, path: str, library: Library) -> WorkedLesson:
    """Read, check and compute one lesson.

    Args:
        root: folder of the site.
        path: the lesson file below it.
        library: foods, moves and words that it may name.
    """
    lesson = read_lesson(root, path, library)
    if not isinstance(lesson, Lesson):
        return WorkedLesson({}, tuple(lesson))
    result = worked_out(lesson, library)
    problems = list(check_lesson(result))
    for _, other in _translated(lesson, library, missing=lambda _: "", stale=str):
        problems += check_words(other)
    if any(problem.weight is Weight.MUST for problem in problems):
        return WorkedLesson({}, tuple(problems))
    missing = partial(foreign.missing, language=lesson.language)
    others = dict(_translated(lesson, library, missing, foreign.stale))
    return WorkedLesson({lesson.language: result, **others}, tuple(problems))


def _translated(
    lesson: Lesson, library: Library, missing: Mark, stale: Mark
) -> Iterator[tuple[str, LessonResult]]:
    """The lesson with its words in each other language that it has."""
    for language in library.site.languages[1:]:
        if language in lesson.translations:
            yield language, worked_out(in_language(lesson, language, missing, stale), library)


def site_problems(root: Path) -> list[Problem]:
    """One sentence where a folder holds no site; nothing where it does."""
    return folder_problems(root)


def lesson_ids(root: Path) -> tuple[str, ...]:
    """Names of the lesson folders, in order."""
    return tuple(Path(file).parent.name for file in lesson_files(root))


def lesson_files(root: Path, only: str | None = None) -> tuple[str, ...]:
    """The lesson files below ``lessons/``, in order, relative to the root."""
    shown = "[!.]*"  # MkDocs leaves hidden folders out too
    files = sorted((root / "lessons").glob(f"{only or shown}/lesson.yaml"))
    return tuple(file.relative_to(root).as_posix() for file in files)
