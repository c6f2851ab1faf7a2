"""All files of one lesson in all its languages, from its results and what stands around it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from generator.compute.result import LessonResult
from generator.media.content import Content, pieces_of
from generator.model.published import LessonState
from generator.model.site import SiteFile
from generator.present.assets.environment import Theme
from generator.present.cartridge.kept import things_path, things_to_json
from generator.present.cartridge.version import Version
from generator.present.languages import Pages, folder_of
from generator.present.lesson import LessonInLanguage
from generator.present.lesson_data import lesson_data
from generator.present.output import Output
from generator.present.pages.cartridges import cartridge_name
from generator.present.pages.home import FRONT, care_needs, front_needs
from generator.present.pages.neighbours import ALONE, Neighbours
from generator.present.pages.page import Surround
from generator.present.pages.take_home import KEEP_LIST, ON_REQUEST, take_home_name
from generator.present.papers.made import made_papers
from generator.present.papers.press import Press
from generator.present.papers.table import lesson_papers
from generator.present.pictures.figures.of_moves import move_pictures, moves_of
from generator.present.pictures.plums.files import cover_files
from generator.present.state import state_output
from generator.present.words.say import Say
from generator.write.cartridge import cartridge_file
from generator.write.keep_list import keep_list
from generator.write.take_home import take_home

Read = Callable[[str], Content]
"""Gives what goes out of a file beside a lesson, by its path from the site's root: ``soup/soup.mp4``."""


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What a lesson's files are made from besides the lesson; another lesson changes nothing of it."""

    site: SiteFile
    says: Mapping[str, Say]
    """The site's words by language, in the site's order of languages."""
    pages: Pages
    """By language: address and title of the hand-written pages."""
    theme: Theme
    press: Press
    assets: Mapping[str, Output]
    """Styles, scripts and pictures that all lessons share, by path."""
    media: Read
    preview: bool
    """Whether the pages are for the educator's own machine, where nothing is carried home or kept."""


def make_lesson(
    results: Mapping[str, LessonResult],
    around: Surroundings,
    beside: Mapping[str, Neighbours] | None = None,
    past: tuple[LessonState, ...] = (),
) -> tuple[Output, ...]:
    """Every file of one lesson: the same bytes for the same arguments, whatever else the site holds.

    A take-home copy holds the film, so the outputs of many lessons are best written as they come.

    Args:
        results: the lesson by language, in the languages it has.
        around: what stands around it.
        beside: by language, the lessons before and after it; nothing where it is looked at by itself.
        past: what was published of it, the oldest first.
    """
    lessons = in_languages(results, around, beside, past)
    data = [one for lesson in lessons for one in lesson_data(lesson.result, lesson.surround)]
    data += [one for lesson in lessons for one in lesson.past_sheets()]
    data += cover_files(lessons[0].result)
    if around.preview:
        made_now = (*data, *(page for lesson in lessons for page in lesson.on_site(None)))
        return (*made_now, *_states(lessons, made_now))
    shared = (*around.assets.values(), *move_pictures(moves_of(results.values())))
    papers = tuple(one for lesson in lessons for one in _papers(lesson, around.press))
    made = {one.path: one.content for one in (*shared, *data, *papers)}
    files = _Files(made, around.media)
    sizes = {one.path: len(one.content) for one in papers}
    pages = (one for lesson in lessons for one in _with_copies(lesson, files, sizes))
    everything = (*data, *pages, *papers)
    return (*everything, *_states(lessons, everything))


def _states(lessons: Iterable[LessonInLanguage], made: tuple[Output, ...]) -> Iterator[Output]:
    """What the lesson says in each language, kept beside its files."""
    paths = [one.path for one in made]
    yield from (state_output(lesson.told, paths) for lesson in lessons)


def in_languages(
    results: Mapping[str, LessonResult],
    around: Surroundings,
    beside: Mapping[str, Neighbours] | None = None,
    past: tuple[LessonState, ...] = (),
) -> list[LessonInLanguage]:
    """A lesson in each of its languages, ready to be filled in; arguments as of ``make_lesson``."""
    return [
        LessonInLanguage(
            around.theme,
            result,
            replace(_surround(language, results, around, beside or {}), past=past),
        )
        for language, result in results.items()
    ]


def _papers(lesson: LessonInLanguage, press: Press) -> Iterator[Output]:
    """The papers of a lesson in one language as files."""
    files = lesson_papers(lesson.result, lesson.surround)
    return made_papers(files, lesson.told, press)


def _with_copies(
    lesson: LessonInLanguage, files: _Files, papers: Mapping[str, int]
) -> Iterator[Output]:
    """The pages of a lesson in one language, its copy to take home, the list of what to keep, its cartridges.

    Args:
        lesson: the lesson.
        files: what they show.
        papers: bytes of each paper, by its path.
    """
    told, surround = lesson.result.lesson, lesson.surround
    folder, source = f"{surround.folder}{told.id}", told.places.file
    copy = take_home(told.id, lesson.in_copy(files.read), files.held)
    pages = tuple(lesson.on_site(copy.size, papers))
    yield from pages
    yield Output(f"{folder}/{take_home_name(told.id)}", b"", source=source, large=copy)
    kept = lesson.kept(pages)
    own: dict[str, bytes | Content] = {one.path: one.content for one in kept}
    own |= {path: files.held(path) for one in kept for path in one.needs}
    care = care_needs(surround)
    by_hand = {f"{surround.folder}{FRONT}": 0, **dict.fromkeys(care[:1], 0)}
    loaded = (*front_needs(surround), *care[1:])
    way_in = {**by_hand, **{path: len(files.read(path)) for path in loaded}}.items()
    listed = keep_list(folder, told.file.title, own, way_in, ON_REQUEST)
    yield Output(f"{folder}/{KEEP_LIST}", listed, source=source)
    yield from _cartridges(lesson, files)


def _cartridges(lesson: LessonInLanguage, files: _Files) -> Iterator[Output]:
    """The lesson for learning platforms, in each version; no page needs it and no copy holds it."""
    cartridge, told = lesson.cartridge(), lesson.result.lesson
    if cartridge is None:
        return
    kept = things_path(lesson.surround.folder, told.id)
    yield Output(kept, things_to_json(cartridge.things))
    for version in Version:
        path = f"{lesson.surround.folder}{told.id}/{cartridge_name(told.id, version)}"
        file = cartridge_file(cartridge, version, lesson.surround.say, files.held)
        yield Output(path, bytes(file), source=told.places.file)


class _Files:
    """What the files hold that a lesson shows; those beside it are looked into once, when they are asked for."""

    def __init__(self, held: Mapping[str, bytes], media: Read) -> None:
        self._held: dict[str, bytes | Content] = dict(held)
        self._media = media

    def held(self, path: str) -> bytes | Content:
        """What a file holds, by its path from the site's root; one beside a lesson is not in memory."""
        if path not in self._held:
            self._held[path] = self._media(path)
        return self._held[path]

    def read(self, path: str) -> bytes:
        """The same in memory: styles, scripts and captions."""
        return b"".join(pieces_of(self.held(path)))


def _surround(
    language: str,
    results: Mapping[str, LessonResult],
    around: Surroundings,
    beside: Mapping[str, Neighbours],
) -> Surround:
    """What stands around the lesson's pages in a language."""
    return Surround(
        site=around.site,
        say=around.says[language],
        folder=folder_of(language, around.site),
        links=around.pages[language],
        elsewhere={
            other: frozenset({result.lesson.id})
            for other, result in results.items()
            if other != language
        },
        preview=around.preview,
        neighbours=beside.get(language, ALONE),
    )
