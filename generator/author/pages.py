"""What the hand-written pages need to know of the site, and how they are read."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from pathlib import Path

from generator.check.page_words import page_words
from generator.model.address import is_allowed, is_elsewhere
from generator.model.ids import PAGE_IDS
from generator.present.pages import problem_band
from generator.present.words.say import is_language
from generator.problems import Problem, shortened
from generator.read.at_home import at_home as files_at_home
from generator.read.at_home import linked_folders
from generator.read.files import is_linked
from generator.read.handwritten import read_page
from generator.read.page_files import file_problems, what_goes_out
from generator.read.site_folder import settings_problems
from generator.steps.site import SiteMap

__all__ = [
    "PAGE_IDS",
    "at_home",
    "file_problems",
    "is_allowed",
    "is_elsewhere",
    "is_linked",
    "languages_off",
    "linked_folders",
    "page_of_problems",
    "page_text",
    "settings_problems",
    "what_goes_out",
    "with_problems",
    "words_of_page",
]


def languages_off(names: Iterable[str], known: SiteMap) -> tuple[str, ...]:
    """Which of these names are languages for which the site has no folder of pages."""
    has = {folder.rstrip("/") for folder in known.folders.values()}
    return tuple(name for name in names if name not in has and is_language(name))


def at_home(root: Path, published: Collection[str], known: SiteMap) -> Iterator[Problem]:
    """A question for each folder with files that stay at home."""
    names = (folder.name for folder in (root / "lessons").iterdir() if any(folder.glob("*.md")))
    first = next(iter(known.folders))
    ways = {
        name: "pages of the first language stand in lessons/ itself; move them there"
        if name == first
        else f"add `{name}` to `languages:` in site_data/site.yaml if they should be"
        for name in languages_off(names, known)
    }
    return files_at_home(root, published, ways, known.unmade.folders)


def page_text(root: Path, path: str) -> str | Problem:
    """The text of a hand-written page, or why it cannot be had."""
    return read_page(root, path)


def words_of_page(root: Path, path: str, known: SiteMap) -> Iterator[Problem]:
    """Questions about the wording of a page, in the language of its folder."""
    text = read_page(root, path)
    if isinstance(text, str):
        yield from page_words(path, text, _language_of(path, known))


def _language_of(path: str, known: SiteMap) -> str:
    below = path.removeprefix("lessons/")
    own = (one for one, folder in known.folders.items() if folder and below.startswith(folder))
    return next(own, next(iter(known.folders)))


def with_problems(page: str, problems: Iterable[Problem]) -> str:
    """A page of the preview that says what is wrong since it was made."""
    return problem_band.with_band(page, _told(problems))


def page_of_problems(problems: Iterable[Problem]) -> str:
    """A page of the preview that says what keeps the site from being made."""
    return problem_band.problem_page(_told(problems))


def _told(problems: Iterable[Problem]) -> Iterator[tuple[str, str, str]]:
    return ((str(one.place), one.what, one.hint) for one in shortened(problems))
