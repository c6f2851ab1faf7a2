"""The page where anybody asks whether a printed sheet is still right, one in each language of the site."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping

from markupsafe import Markup

from generator.present.entry import LessonEntry
from generator.present.languages import folder_of
from generator.present.pages.page import STAMPS, Look, Surround
from generator.present.pages.table import SHEETS
from generator.present.views.stamps import SheetsOfView, StampsView

_LOOK = Look(("screen", "below", "stamps"), "stamps-{locale}")


def stamps_view(
    entries: Iterable[LessonEntry],
    untranslated: Iterable[LessonEntry],
    signs: int,
    surround: Surround,
) -> StampsView:
    """The page, which search engines need not list.

    Args:
        entries: the lessons of the page's language.
        untranslated: those that are in the site's first language and not in it.
        signs: by how many first signs of a stamp the files are parted that are fetched.
        surround: of the language.
    """
    say, site = surround.say, surround.site
    folders: Mapping[str, str] = {one: folder_of(one, site) for one in site.languages}
    return StampsView(
        page=surround.page(
            STAMPS, say("stamps_title"), say("stamps_says"), look=_LOOK, searched=False
        ),
        signs=signs,
        folders=json.dumps(folders),
        lessons=tuple(_lessons(entries, untranslated, surround.folder)),
    )


def _lessons(
    entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry], folder: str
) -> Iterator[SheetsOfView]:
    here, others = ((one, folder) for one in entries), ((one, "") for one in untranslated)
    for entry, stands in (*here, *others):
        title = Markup(entry.title)  # noqa: S704  # an entry holds safe HTML
        yield SheetsOfView(title, entry.id, f"{stands}{entry.id}/{SHEETS.name}")
