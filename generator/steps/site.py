"""A site whose lessons are made: what all its other pages are made with."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from markupsafe import Markup

from generator.check import check_site
from generator.check.gone import gone_without_a_word
from generator.compute.result import LessonResult
from generator.engine.inputs import LESSON
from generator.making import Surroundings
from generator.model.library import Library
from generator.model.published import NOTHING_PUBLISHED, Published
from generator.present.entry import LessonEntry, in_chosen_order
from generator.present.languages import folder_of
from generator.present.output import Output
from generator.present.pages.addresses import lesson_addresses
from generator.present.pages.codes import CODES
from generator.present.pages.lesson_table import LESSONS
from generator.present.pages.page import STAMPS, Surround
from generator.present.pictures.figures.of_moves import move_pictures
from generator.present.presenter import Presenter
from generator.present.updates.paths import UPDATES
from generator.problems import Place, Problem
from generator.steps.drafts import drafts_told
from generator.steps.facts import media_of
from generator.steps.lessons import KeptLesson
from generator.steps.standing import FRONT, OLDER_NAMES, pages_of, today_of
from generator.steps.work import WorkedLesson, work_lesson

_OWN = (CODES, LESSONS, UPDATES, STAMPS)
"""Pages of every site that no hand has written: for codes, with all lessons, with what changed, for stamps."""
__all__ = ["FRONT", "Site", "SiteMap", "Unmade", "map_of", "site_of"]


@dataclass(frozen=True, slots=True)
class Unmade:
    """Lessons without pages, and why; a preview makes drafts all the same."""

    drafts: Mapping[str, Place]
    """By folder of a lesson that is a draft: where it says so."""
    broken: frozenset[str] = frozenset()
    """Folders of lessons in which something must be put right first."""
    unseen: tuple[Problem, ...] = ()
    """What looks like a lesson and is none."""

    @property
    def folders(self) -> frozenset[str]:
        """Every folder of which is told why it has no pages."""
        told = {one.place.path.split("/")[1] for one in self.unseen if "/" in one.place.path}
        return self.broken | self.drafts.keys() | told


@dataclass(frozen=True, slots=True)
class SiteMap:
    """Where pages stand, for whoever wants to lead to one."""

    folders: Mapping[str, str]
    """By language, the site's first one first: ``es/``, or nothing for the first."""
    lessons: Mapping[str, frozenset[str] | None] = field(repr=False)
    """Every page that no hand has written by its path on the site; of a lesson itself the ids of its stops."""
    media: frozenset[str] = field(repr=False)
    """Files that lessons name, below ``lessons/``."""
    unmade: Unmade
    """Lessons that have no pages."""


@dataclass(frozen=True, slots=True)
class Site:
    """Everything but the pages written by hand, which it helps to make."""

    library: Library
    around: Surroundings
    lessons: tuple[KeptLesson, ...]
    """In the order of their folders."""
    presenters: Mapping[str, Presenter]
    """By language; they make the front page and the hand-written pages wear the same theme."""
    map: SiteMap
    """Where the pages of the lessons stand."""
    published: Published = NOTHING_PUBLISHED
    """What was published of the site before."""

    @property
    def questions(self) -> tuple[Problem, ...]:
        """Problems the site is published with, in the order of their places."""
        lacking = (name for lesson in self.lessons for name in lesson.facts.lacking)
        found = [problem for lesson in self.lessons for problem in lesson.facts.questions]
        found += self.map.unmade.unseen
        found += () if self.around.preview else drafts_told(self.map.unmade.drafts)
        found += check_site(self.library, lacking, (one.facts.listed for one in self.lessons))
        standing = [one.facts.standing for one in self.lessons]
        unmade = self.map.unmade
        today = today_of(
            self.library, standing, unmade.folders, self.pages, is_whole=not unmade.broken
        )
        found += gone_without_a_word(self.published, today)
        return tuple(sorted(found, key=lambda problem: problem.place))

    def entries(self, language: str) -> tuple[LessonEntry, ...]:
        """What the lists of a language say of its lessons, in the order they are to stand in."""
        every = (entry for lesson in self.lessons for entry in lesson.facts.entries)
        return in_chosen_order(entry for entry in every if entry.language == language)

    @property
    def pages(self) -> frozenset[str]:
        """Every page of the site by its path, but those in frames of others and deeper ones written by hand."""
        return pages_of(self.map.folders, self.map.lessons, self.around.pages)

    def page(self, path: str, title: str, body: str, *, headed: bool, draft: bool = False) -> str:
        """A hand-written page from its doctype to its end; the front page has the lessons below it.

        Args:
            path: from the site's root.
            title: of the page.
            body: HTML made of the educator's Markdown.
            headed: whether it has a main heading of its own.
            draft: whether only a preview shows it.
        """
        folders = self.map.folders
        language = max(folders, key=lambda one: path.startswith(folders[one]) * len(folders[one]))
        presenter, entries = self.presenters[language], self.entries(language)
        body = presenter.with_lessons(body, entries, self.untranslated(language))
        below = path.removeprefix(folders[language])
        if below == FRONT:
            return presenter.home(entries, Markup(body), headed=headed)  # noqa: S704  # the educator's own Markdown
        return presenter.prose(below, title, body, headed=headed, draft=draft)

    def not_found(self) -> Output:
        """The page a host sends in the place of one that is not there."""
        told = {made: self.entries(language) for language, made in self.presenters.items()}
        had = any(one.facts.standing.formerly for one in self.lessons)
        return next(iter(told)).not_found(told, OLDER_NAMES if had else "")

    def components(self, root: Path) -> Iterator[Output]:
        """For a preview: the page of all components, made of as few lessons as show every kind of stop."""
        shown: list[Mapping[str, LessonResult]] = []
        seen: set[str] = set()
        for lesson in self.lessons:
            new = {word for stop in lesson.facts.stops for word in stop if not seen >= set(stop)}
            if new:
                seen |= new
                path = f"lessons/{lesson.id}/{LESSON}"
                shown.append(work_lesson(root, path, self.library).results)
        for language, presenter in self.presenters.items():
            yield presenter.components(one[language] for one in shown if language in one)

    def codes(self) -> Iterator[Output]:
        """The page of each language that reads finish codes."""
        for language, presenter in self.presenters.items():
            yield presenter.codes(self.entries(language), self.untranslated(language))

    def lesson_tables(self) -> Iterator[Output]:
        """The page of each language with all lessons in a table."""
        for language, presenter in self.presenters.items():
            yield presenter.lesson_table(self.entries(language), self.untranslated(language))

    def updates(self) -> Iterator[Output]:
        """The pages of each language that say what each publication changed, and their feeds."""
        leads_on = self.leads_on
        for language, presenter in self.presenters.items():
            there = {entry.id for entry in self.entries(language)}
            yield from presenter.updates(self.published, leads_on, there)

    @property
    def leads_on(self) -> Mapping[str, str]:
        """By id of a lesson that was renamed, the id it has today."""
        return {
            name: lesson.id for lesson in self.lessons for name, _ in lesson.facts.listed.formerly
        }

    def untranslated(self, language: str) -> tuple[LessonEntry, ...]:
        """The lessons of the site's first language that are not in this one."""
        first = next(iter(self.map.folders))
        if language == first:
            return ()
        here = {entry.id for entry in self.entries(language)}
        return tuple(entry for entry in self.entries(first) if entry.id not in here)

    def shared(self) -> Iterator[Output]:
        """The files that lessons share: styles, scripts, figures of moves."""
        yield from self.around.assets.values()
        names = dict.fromkeys(name for lesson in self.lessons for name in lesson.facts.moves)
        yield from move_pictures({name: self.library.moves[name] for name in names})


def site_of(
    library: Library,
    around: Surroundings,
    lessons: Iterable[KeptLesson],
    unmade: Unmade,
    published: Published = NOTHING_PUBLISHED,
) -> Site:
    """The site of these lessons; drafts are among them in a preview only, which may lack broken ones."""
    kept, site = tuple(lessons), library.site
    folders = {one: folder_of(one, site) for one in site.languages}
    has = {one: frozenset(_pages_in(one, kept, around)) for one in site.languages}
    made = {
        one: Presenter(
            around.theme,
            Surround(
                site=site,
                say=around.says[one],
                folder=folders[one],
                links=around.pages[one],
                elsewhere={other: pages for other, pages in has.items() if other != one},
                preview=around.preview,
            ),
        )
        for one in site.languages
    }
    pages = {
        f"{folders[language]}{lesson.id}/{name}": stops
        for lesson in kept
        for language, held in lesson.facts.addresses.items()
        for name, stops in held.items()
    }
    pages |= _pages_of_site(folders)
    media = frozenset(f"{lesson.id}/{name}" for lesson in kept for name in lesson.facts.media)
    return Site(library, around, kept, made, SiteMap(folders, pages, media, unmade), published)


def _pages_of_site(folders: Mapping[str, str]) -> Mapping[str, None]:
    """Where the site's own pages stand; there is no place on them to lead to."""
    return dict.fromkeys(folder + page for folder in folders.values() for page in _OWN)


def _pages_in(language: str, lessons: Iterable[KeptLesson], around: Surroundings) -> Iterator[str]:
    """What a language has that others may have too: pages, and lessons by their folders' names."""
    yield from (FRONT, *_OWN)
    yield from (address for address, _ in around.pages[language])
    yield from (lesson.id for lesson in lessons if language in lesson.facts.addresses)


def map_of(library: Library, worked: Iterable[WorkedLesson], unmade: Unmade) -> SiteMap:
    """Where the pages of lessons would stand that were read and not made.

    Args:
        library: of the site.
        worked: the lessons that are published.
        unmade: the others.
    """
    folders = {one: folder_of(one, library.site) for one in library.site.languages}
    results = [result for one in worked for result in one.results.values()]
    pages = {
        f"{folders[result.lesson.language]}{result.lesson.id}/{name}": stops
        for result in results
        for name, stops in lesson_addresses(result).items()
    }
    pages |= _pages_of_site(folders)
    media = frozenset(
        f"{result.lesson.id}/{name}" for result in results for name in media_of(result)
    )
    return SiteMap(folders, pages, media, unmade)
