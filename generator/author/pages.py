"""What the hand-written pages need to know of the lessons, and how they are read."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from generator.build import Built, Worked
from generator.present.languages import folder_of
from generator.present.pages.addresses import lesson_addresses
from generator.present.words.say import is_language
from generator.problems import Problem
from generator.read.files import read_text
from generator.read.site_folder import settings_problems

__all__ = ["addresses", "folders", "languages_off", "page_text", "settings_problems", "with_lists"]


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


def page_text(root: Path, path: str) -> str | Problem:
    """The text of a hand-written page, or why it cannot be had."""
    return read_text(root, path)


def with_lists(built: Built, html: str, language: str) -> str:
    """A hand-written page with the list of lessons where its text asks for one."""
    others = built.worked.results if language in built.worked.translated else ()
    return built.presenters[language].with_lessons(html, built.worked.lessons(language), others)
