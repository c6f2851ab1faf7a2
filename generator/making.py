"""All files of one lesson in all its languages, from its results and what stands around it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

from generator.compute.result import LessonResult
from generator.model.site import SiteFile
from generator.present.assets.environment import Theme
from generator.present.languages import Pages, folder_of
from generator.present.output import Output
from generator.present.pages.page import Surround
from generator.present.pages.take_home import take_home_name, with_size
from generator.present.presenter import Presenter, move_pictures, moves_of
from generator.present.words.foreign import without_marks
from generator.present.words.say import Say
from generator.write.keep_list import NAME, keep_list
from generator.write.lesson_files import needs_of
from generator.write.take_home import take_home

Read = Callable[[str], bytes]
"""Gives what a file beside a lesson holds, by its path from the site's root: ``soup/soup.mp4``."""


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What a lesson's files are made from besides the lesson; another lesson changes nothing of it."""

    site: SiteFile
    says: Mapping[str, Say]
    """The site's words by language, in the site's order of languages."""
    pages: Pages
    """By language: address and title of the hand-written pages."""
    theme: Theme
    assets: Mapping[str, Output]
    """Styles, scripts and pictures that all lessons share, by path."""
    media: Read
    preview: bool
    """Whether the pages are for the educator's own machine, where nothing is carried home or kept."""


def make_lesson(results: Mapping[str, LessonResult], around: Surroundings) -> tuple[Output, ...]:
    """Every file of one lesson: the same bytes for the same arguments, whatever else the site holds.

    A take-home copy holds the film, so the outputs of many lessons are best written as they come.

    Args:
        results: the lesson by language, in the languages it has.
        around: what stands around it.
    """
    made = {
        language: tuple(
            Presenter(around.theme, _surround(language, results, around)).lesson(result)
        )
        for language, result in results.items()
    }
    if around.preview:
        return tuple(output for one in made.values() for output in one)
    shared = {one.path: one.content for one in move_pictures(moves_of(results.values()))}
    shared |= {path: one.content for path, one in around.assets.items()}
    own = {output.path: output.content for one in made.values() for output in one}
    media = _media(next(iter(results.values())), around)
    files = shared | media | own
    return tuple(
        output
        for language, result in results.items()
        for output in _whole(made[language], result, _surround(language, results, around), files)
    )


def _surround(language: str, results: Mapping[str, LessonResult], around: Surroundings) -> Surround:
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
    )


def _media(result: LessonResult, around: Surroundings) -> dict[str, bytes]:
    """What the files beside the lesson hold that its pages show."""
    video = result.lesson.file.video
    names = (video.file, video.poster, *video.captions.values()) if video else ()
    paths = [f"{result.lesson.id}/{name}" for name in names if name]
    return {path: around.media(path) for path in paths}


def _whole(
    made: tuple[Output, ...], result: LessonResult, surround: Surround, files: Mapping[str, bytes]
) -> Iterator[Output]:
    """A lesson's outputs in one language with what each needs, its take-home copy and its keep list."""
    above, lesson, say = surround.folder, result.lesson.id, surround.say
    told = [
        replace(one, needs=needs_of(one.content.decode(), one.path, files.__contains__))
        if one.path.endswith(".html")
        else one
        for one in made
    ]
    top = [one for one in told if one.path.rpartition("/")[0] in {above + lesson, lesson}]
    parts = {one.path for one in top} | {path for one in top for path in one.needs}
    own = {path: files[path] for path in parts}
    copy = take_home(lesson, own, surround.site.address)
    source = result.lesson.places.file
    for one in told:
        page = (
            with_size(one.content.decode(), len(copy), say).encode() if one.needs else one.content
        )
        own |= {one.path: page} if one.path in own else {}
        yield replace(one, content=page)
    yield Output(f"{above}{lesson}/{take_home_name(lesson)}", copy, source=source)
    title = without_marks(result.lesson.file.title)
    front = ("screen.css", "home.css", f"home-{say.locale}.js", "favicon.svg")
    assets = [(f"assets/{name}", len(files[f"assets/{name}"])) for name in sorted(front)]
    listed = keep_list(above + lesson, title, own, ((f"{above}index.html", 0), *assets))
    yield Output(f"{above}{lesson}/{NAME}", listed, source=source)
