"""The page for teachers that reads finish codes, one in each language of the site."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from markupsafe import Markup

from generator.present.entry import LessonEntry
from generator.present.finish_file import FINISH_FILE
from generator.present.pages.page import Look, Surround
from generator.present.views.codes import CodesOfView, CodesView

CODES = "codes.html"
"""Path of the page in its language's folder."""
_LOOK = Look(("screen", "below", "codes"), "codes-{locale}")


def codes_view(
    entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry], surround: Surround
) -> CodesView:
    """The page, which search engines need not list.

    Args:
        entries: the lessons of the page's language.
        untranslated: those that are in the site's first language and not in it.
        surround: of the language.
    """
    say = surround.say
    page = surround.page(CODES, say("codes_title"), say("codes_says"), look=_LOOK, searched=False)
    return CodesView(page, tuple(_lessons(entries, untranslated, surround.folder)))


def _lessons(
    entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry], folder: str
) -> Iterator[CodesOfView]:
    here, others = ((one, folder) for one in entries), ((one, "") for one in untranslated)
    for entry, stands in (*here, *others):
        lesson, numbers = (
            " ".join(map(str, (own, *before)))
            for own, before in zip(entry.marks, entry.former_marks, strict=True)
        )
        title = Markup(entry.title)  # noqa: S704  # an entry holds safe HTML
        yield CodesOfView(title, lesson, numbers, f"{stands}{entry.id}/{FINISH_FILE}")
