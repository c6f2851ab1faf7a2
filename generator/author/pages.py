"""What the hand-written pages need to know of the lessons, and how they are read."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from pathlib import Path

from generator.build import Built, Worked
from generator.present.languages import folder_of
from generator.present.pages.addresses import lesson_addresses
from generator.present.words.say import is_language
from generator.problems import Problem
from generator.read.at_home import at_home as files_at_home
from generator.read.at_home import linked_folders
from generator.read.files import is_linked, read_text
from generator.read.site_folder import settings_problems

__all__ = [
    "addresses",
    "at_home",
    "folders",
    "is_linked",
    "languages_off",
    "linked_folders",
    "media",
    "page_text",
    "settings_problems",
    "with_lists",
]


def folders(worked: Worked) -> dict[str, str]:
    """Where the pages of each language stand: ``es/``, or nothing for the first."""
    return {one: folder_of(one, worked.library.site) for one in worked.library.site.languages}


def addresses(worked: Worked) -> dict[str, frozenset[str] | None]:
    """Every page of a lesson by its path on the site; of the lesson itself the ids of its stops."""
    return {
        f"{folder}{result.lesson.id}/{name}": stops
        for language, folder in folders(worked).items()
        for result in worked.lessons(language)
        for name, stops in lesson_addresses(result).items()
    }


def languages_off(names: Iterable[str], worked: Worked) -> tuple[str, ...]:
    """Which of these names are languages for which the site has no folder of pages."""
    has = {folder.rstrip("/") for folder in folders(worked).values()}
    return tuple(name for name in names if name not in has and is_language(name))


def media(worked: Worked) -> frozenset[str]:
    """Files that lessons name, below ``lessons/``."""
    return frozenset(
        f"{result.lesson.id}/{name}"
        for result in worked.results
        if (video := result.lesson.file.video)
        for name in (video.file, video.poster, *video.captions.values())
        if name
    )


def at_home(root: Path, published: Collection[str], worked: Worked) -> Iterator[Problem]:
    """A question for each folder with files that stay at home."""
    names = (folder.name for folder in (root / "lessons").iterdir() if any(folder.glob("*.md")))
    first = worked.library.site.languages[0]
    ways = {
        name: "pages of the first language stand in lessons/ itself; move them there"
        if name == first
        else f"add `{name}` to `languages:` in site_data/site.yaml if they should be"
        for name in languages_off(names, worked)
    }
    return files_at_home(root, published, ways)


def page_text(root: Path, path: str) -> str | Problem:
    """The text of a hand-written page, or why it cannot be had."""
    return read_text(root, path)


def with_lists(built: Built, html: str, language: str) -> str:
    """A hand-written page with the list of lessons where its text asks for one."""
    others = built.worked.results if language in built.worked.translated else ()
    return built.presenters[language].with_lessons(html, built.worked.lessons(language), others)
