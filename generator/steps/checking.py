"""Everything that is wrong with the lessons of a site, or with some of them; nothing is written."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from generator.carried import theme_of
from generator.check import check_site
from generator.check.gone import gone_without_a_word
from generator.check.page_numbers import HandPage, page_numbers
from generator.check.standing import standing_of
from generator.model.library import Library
from generator.model.site import SiteFile
from generator.present.languages import folder_of
from generator.problems import Place, Problem
from generator.read.draft import draft_place
from generator.read.handwritten import handwritten_pages, read_page
from generator.read.lesson_head import former_names_from, head_text
from generator.read.unseen import LESSON, unseen_lessons
from generator.steps.drafts import drafts_told, of_draft
from generator.steps.library import checked_library
from generator.steps.past import published_of
from generator.steps.site import SiteMap, Unmade, map_of
from generator.steps.standing import former_problems, pages_of, today_of
from generator.steps.surroundings import refuse_half_made
from generator.steps.work import WorkedLesson, lesson_files, names_and_listed, work_lesson


@dataclass(frozen=True, slots=True)
class Checked:
    """What became of the lessons."""

    lessons: int
    """How many were looked at."""
    problems: tuple[Problem, ...]
    map: SiteMap
    """Where the pages of those that are published would stand."""


def check_lessons(root: Path, only: Collection[str] = ()) -> Checked:
    """Read, compute and check lessons; what is wrong with a draft stops nobody.

    Args:
        root: folder of the site, the one that holds ``lessons/``.
        only: folders of the lessons wanted, or nothing for all of them and for what concerns the whole site.

    Raises:
        LessonError: the site's data must be put right.
    """
    library = checked_library(root)
    refuse_half_made(Path(theme_of(root)), library)
    names = {Path(path).parent.name: path for path in lesson_files(root)}
    wanted = {name: path for name, path in names.items() if name in only or not only}
    worked = {name: work_lesson(root, path, library) for name, path in wanted.items()}
    places = {name: draft_place(root, path) for name, path in wanted.items()}
    drafts = {name: place for name, place in places.items() if place}
    public = {name: one for name, one in worked.items() if name not in drafts}
    problems = _told(worked, drafts)
    unseen = tuple(unseen_lessons(root, library.site.languages))
    if not only:
        problems += check_site(library, *names_and_listed(public.values()))
        problems += unseen
        problems += _pages(root, library.site, public)
    broken = frozenset(name for name, one in public.items() if not one.results)
    known = map_of(library, public.values(), Unmade(drafts, broken, unseen))
    if not only:
        problems += _names_of_before(root, library, public.values(), known)
    return Checked(len(worked), tuple(problems), known)


def _names_of_before(
    root: Path, library: Library, public: Collection[WorkedLesson], known: SiteMap
) -> Iterator[Problem]:
    """What old links would not find, by names of before and by the record of publications."""
    published, unread = published_of(root)
    yield from unread
    site = library.site
    by_hand = {one: handwritten_pages(root, folder_of(one, site)) for one in site.languages}
    pages = pages_of(known.folders, known.lessons, by_hand)
    listed, unmade = names_and_listed(public)[1], known.unmade.folders
    yield from former_problems(library, listed, unmade, pages)
    results = [[result.lesson for result in one.results.values()] for one in public if one.results]
    heads = (head_text(root, f"lessons/{one}/{LESSON}") for one in unmade)
    held = {*unmade, *(name for head in heads for name in former_names_from(head))}
    whole = not known.unmade.broken
    today = today_of(library, map(standing_of, results), held, pages, is_whole=whole)
    yield from gone_without_a_word(published, today)


def _told(worked: dict[str, WorkedLesson], drafts: dict[str, Place]) -> list[Problem]:
    """What is wrong with each lesson, and that some are drafts."""
    problems = list(drafts_told(drafts))
    for name, one in worked.items():
        problems += of_draft(one.problems) if name in drafts else one.problems
    return problems


def _pages(root: Path, site: SiteFile, public: Mapping[str, WorkedLesson]) -> Iterator[Problem]:
    """What pages written by hand say wrongly of the lessons that they lead to."""
    for language in site.languages:
        told = {name: one.results for name, one in public.items() if language in one.results}
        lessons = {name: results[language] for name, results in told.items()}
        for file in sorted((root / "lessons" / folder_of(language, site)).glob("*.md")):
            path = file.relative_to(root).as_posix()
            text = read_page(root, path)
            if isinstance(text, str):  # what else is wrong with a page is told with its links
                yield from page_numbers(HandPage(path, text, language), lessons)
