"""One presenter for each language of the site, each knowing what the others have."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from generator.model.library import Library
from generator.model.site import SiteFile
from generator.present.assets.environment import Theme
from generator.present.pages.page import Surround
from generator.present.presenter import Presenter
from generator.present.words.say import Say

Pages = Mapping[str, tuple[tuple[str, str], ...]]
"""By language: address and title of the hand-written pages."""


def presenters(
    theme: Path,
    library: Library,
    lessons: Mapping[str, tuple[str, ...]],
    pages: Pages,
    *,
    preview: bool,
) -> dict[str, Presenter]:
    """Presenters by language, the first language first.

    Args:
        theme: folder of templates.
        library: brings the words of each language.
        lessons: by language, ids of the lessons it has.
        pages: by language, its hand-written pages.
        preview: whether the pages are for the educator's own machine.
    """
    templates = Theme(theme)
    has = {
        language: frozenset(
            {"index.html", *lessons[language], *(address for address, _ in pages[language])}
        )
        for language in library.site.languages
    }
    return {
        language: Presenter(
            templates,
            Surround(
                site=library.site,
                say=Say(library.words[language]),
                folder=folder_of(language, library.site),
                links=pages[language],
                elsewhere={
                    other: addresses for other, addresses in has.items() if other != language
                },
                preview=preview,
            ),
        )
        for language in library.site.languages
    }


def folder_of(language: str, site: SiteFile) -> str:
    """Where a language's pages stand: ``es/``, or nothing for the first language."""
    return "" if language == site.languages[0] else f"{language}/"
