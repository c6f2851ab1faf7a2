"""A site as it stands: which pages it has, and what of names and records does not fit to that."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence

from generator.check.former_names import former_names_apart
from generator.check.former_pages import former_pages_lead_on
from generator.check.gone import Today
from generator.check.listed import Listed
from generator.check.standing import Standing
from generator.model.library import Library
from generator.present.languages import Pages
from generator.present.pages.not_found import NOT_FOUND
from generator.problems import Place, Problem
from generator.read.library import SITE

OLDER_NAMES = "assets/formerly.json"
"""The list by which the page in the place of a lost one finds a file of a lesson that had another name."""
FRONT = "index.html"
"""Address of the front page from the site's root; it lists the lessons, with or without a text by hand."""


def pages_of(folders: Mapping[str, str], made: Iterable[str], by_hand: Pages) -> frozenset[str]:
    """Paths of all pages, from the site's root.

    Args:
        folders: by language, where its pages stand.
        made: pages that no hand has written.
        by_hand: the others, by language.
    """
    written = (
        folders[language] + page
        for language, pages in by_hand.items()
        for page, _ in (*pages, (FRONT, ""))
    )
    return frozenset({*made, *written, NOT_FOUND})


def today_of(
    library: Library,
    lessons: Iterable[Standing],
    unmade: Collection[str],
    pages: frozenset[str],
    *,
    is_whole: bool,
) -> Today:
    """The site as it stands, for whoever holds the record of publications against it.

    Args:
        library: of the site.
        lessons: those that go out.
        unmade: names of the others.
        pages: of the site.
        is_whole: whether every lesson could be read.
    """
    return Today(
        lessons=tuple(lessons),
        held_back=unmade,
        languages=library.site.languages,
        languages_at=library.places.get(("languages", 0), Place(SITE)),
        pages=pages,
        is_whole=is_whole,
        formerly=library.site.formerly.keys(),
    )


def former_problems(
    library: Library, lessons: Sequence[Listed], unmade: Collection[str], pages: frozenset[str]
) -> Iterator[Problem]:
    """What must be put right between names of before and names of today; arguments as above."""
    folders = {*(one.folder for one in lessons), *unmade}
    claimed = {name for one in lessons for name, _ in one.formerly}
    yield from former_names_apart(lessons)
    yield from former_pages_lead_on(library, folders, pages, claimed)
