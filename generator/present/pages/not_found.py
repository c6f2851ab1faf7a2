"""The page a host sends in the place of one that is not there: one for all languages of the site."""

from __future__ import annotations

import re
from collections.abc import Iterable

from markupsafe import Markup

from generator.present.addresses import Addresses
from generator.present.entry import LessonEntry
from generator.present.pages.home import FRONT, MANY, PROSE
from generator.present.pages.page import STAMPS, Surround
from generator.present.updates.paths import UPDATES
from generator.present.views.not_found import NotFoundInLanguageView, NotFoundView
from generator.present.views.page import LinkView

NOT_FOUND = "404.html"
"""Its path from the site's root; hosts of static sites know it by this name (common practice, no source)."""
_LEADS = re.compile(r'(<[a-z]+ [^<>]*?\b(?:href|src)=")(?![/#]|[a-z][a-z0-9+.-]*:)([^"]*)')
"""An address in a tag that begins neither at the root of a host nor with a scheme, and is more than a place."""


def not_found_view(
    told: Iterable[tuple[Surround, Iterable[LessonEntry]]], formerly: str = ""
) -> NotFoundView:
    """The page, in the language of the site first.

    Args:
        told: what surrounds the pages of each language, and its lessons in their order.
        formerly: path of the list of older names of lessons, where there is one.
    """
    parts = tuple(told)
    first, say = parts[0][0], parts[0][0].say
    page = first.page(
        NOT_FOUND, say("not_found"), say("not_found_says"), look=PROSE, searched=False
    )
    return NotFoundView(page, tuple(_in_language(*part) for part in parts), formerly)


def _in_language(surround: Surround, entries: Iterable[LessonEntry]) -> NotFoundInLanguageView:
    say, folder = surround.say, surround.folder
    lessons = tuple(_lesson(folder, one) for one in entries)
    return NotFoundInLanguageView(
        language=say.locale,
        direction=say.direction,
        title=say("not_found"),
        says=say("not_found_says"),
        front=LinkView(folder + FRONT, say("all_lessons")),
        updates=LinkView(folder + UPDATES, say("updates_link")),
        stamps=LinkView(folder + STAMPS, say("stamps_title")),
        moved=(say("formerly_file"), say("formerly_file_link")),
        lessons=lessons if len(lessons) < MANY else (),
    )


def _lesson(folder: str, entry: LessonEntry) -> LinkView:
    title = Markup(entry.title)  # noqa: S704  # made safe when it was written down
    return LinkView(f"{folder}{entry.id}/index.html", title)


def from_root(body: str, at: Addresses) -> str:
    """The body of such a page written by hand, its addresses beginning at the root of the host.

    Args:
        body: clean HTML, as of a page at the site's root.
        at: the addresses of the page.
    """
    return _LEADS.sub(lambda found: found[1] + at.root + found[2], body)
