"""From an educator's files to every page of the site: the table of contents of the program."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from markupsafe import Markup

from generator.check import check_lesson, check_site, check_words
from generator.compute.result import LessonResult
from generator.compute.work_out import work_out
from generator.engine.lock import alone
from generator.making import Surroundings, make_lesson
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.texts import in_language
from generator.present.assets.environment import Theme
from generator.present.assets.later import later_files
from generator.present.languages import folder_of, presenters
from generator.present.output import Output
from generator.present.pages.problem_band import with_band
from generator.present.presenter import Presenter, move_pictures, shared_files
from generator.present.stops.missing_parts import missing_parts
from generator.present.words import foreign
from generator.present.words.say import Say
from generator.problems import LessonError, Place, Problem, Weight
from generator.read.beside import BesideLessons
from generator.read.handwritten import handwritten_pages
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from generator.write.fresh import mark_fresh, sources
from generator.write.swap import replaced

Mark = Callable[[str], str]
"""What is made of a text that a translation lacks."""


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

    def by_lesson(self) -> Iterator[Mapping[str, LessonResult]]:
        """Each lesson by language, in the languages it has."""
        languages = self.library.site.languages
        every = {one: {done.lesson.id: done for done in self.lessons(one)} for one in languages}
        for result in self.results:
            name = result.lesson.id
            yield {one: every[one][name] for one in languages if name in every[one]}


def work(root: Path, only: str | None = None) -> Worked:
    """Read, check and compute the lessons; nothing is written.

    Args:
        root: folder of the site, the one that holds ``lessons/``.
        only: id of the one lesson wanted, or all of them.

    Raises:
        LessonError: with every problem of every file, when at least one must be put right.
    """
    library = read_library(root)
    if half_made := tuple(missing_parts(root / "theme", library.words)):
        raise LessonError(Problem(Place(path), what, hint) for path, what, hint in half_made)
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
    in_other = tuple(_each_translated(lessons, library, missing=lambda _: "", stale=str))
    problems += [problem for result in in_other for problem in check_words(result)]
    problems += check_site(library, (*results, *in_other))
    if any(problem.weight is Weight.MUST for problem in problems):
        raise LessonError(problems)
    translated = {
        language: tuple(_translated(lessons, language, library, foreign.missing, foreign.stale))
        for language in library.site.languages[1:]
    }
    return Worked(library, results, translated, tuple(problems))


def _each_translated(
    lessons: list[Lesson], library: Library, missing: Mark, stale: Mark
) -> Iterator[LessonResult]:
    for language in library.site.languages[1:]:
        yield from _translated(lessons, language, library, missing, stale)


def _translated(
    lessons: list[Lesson], language: str, library: Library, missing: Mark, stale: Mark
) -> Iterator[LessonResult]:
    """The lessons that have a translation, with their words in that language."""
    for lesson in lessons:
        if language in lesson.translations:
            yield work_out(in_language(lesson, language, missing, stale), library)


@dataclass(frozen=True, slots=True)
class Built:
    """A site in memory, whole but for the hand-written pages."""

    worked: Worked
    presenters: Mapping[str, Presenter]
    """By language; they make the front page and the hand-written pages wear the same theme."""
    outputs: tuple[Output, ...]
    """Every page and file, in the order they are written."""

    @property
    def folders(self) -> dict[str, str]:
        """Where the pages of each language stand: ``es/``, or nothing for the first."""
        library = self.worked.library
        return {language: folder_of(language, library.site) for language in library.site.languages}

    def front(self, language: str, intro: Markup) -> str:
        """The front page of a language, below what the educator wrote for it."""
        return self.presenters[language].home(self.worked.lessons(language), intro)


def build(root: Path, *, preview: bool = False) -> Built:
    """Make every page of the site; nothing is written.

    Args:
        root: folder of the site.
        preview: whether the pages are for the educator's own machine, where a reload script runs.

    Raises:
        LessonError: as ``work``.
    """
    worked = work(root)
    languages = worked.library.site.languages
    around = surroundings(root, worked.library, preview=preview)
    ids = {one: tuple(done.lesson.id for done in worked.lessons(one)) for one in languages}
    made = presenters(root / "theme", worked.library, ids, around.pages, preview=preview)
    outputs = list(around.assets.values())
    for one in worked.by_lesson():
        outputs += make_lesson(one, around)
    outputs += move_pictures(worked.results)
    if preview:
        outputs += [made[one].components(worked.lessons(one)) for one in languages]
    return Built(worked, made, tuple(outputs))


def surroundings(root: Path, library: Library, *, preview: bool = False) -> Surroundings:
    """What all lessons are made in, the shared styles and scripts among it."""
    site, theme = library.site, root / "theme"
    says = {language: Say(library.words[language]) for language in site.languages}
    recording = preview or site.publish_recording_pack
    shared = [*shared_files(theme, recording=recording), *later_files(theme, says.values())]
    return Surroundings(
        site=site,
        says=says,
        pages={one: handwritten_pages(root, folder_of(one, site)) for one in site.languages},
        theme=Theme(theme),
        assets={output.path: output for output in shared},
        media=BesideLessons(root / "lessons"),
        preview=preview,
    )


def with_problems(page: str, problems: Iterable[Problem]) -> str:
    """A page of the preview that says what is wrong since it was made."""
    return with_band(page, ((str(one.place), one.what, one.hint) for one in problems))


def write_site(root: Path, write: Callable[[Path], None]) -> Path:
    """Let ``write`` fill an empty folder, and put it in the place of ``site/`` when that went well."""
    site = root / "site"
    with alone(root):
        before = sources(str(root))
        with replaced(site) as folder:
            write(folder)
        mark_fresh(str(root), before)
    return site


def lesson_ids(root: Path) -> tuple[str, ...]:
    """Names of the lesson folders, in order."""
    return tuple(Path(file).parent.name for file in lesson_files(root))


def lesson_files(root: Path, only: str | None = None) -> tuple[str, ...]:
    """The lesson files below ``lessons/``, in order, relative to the root."""
    shown = "[!.]*"  # MkDocs leaves hidden folders out too
    files = sorted((root / "lessons").glob(f"{only or shown}/lesson.yaml"))
    return tuple(file.relative_to(root).as_posix() for file in files)
