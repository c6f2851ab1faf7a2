"""All lessons in a table, with what a teacher chooses by; printed, a sheet for a staff room's wall."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from markupsafe import Markup, escape

from generator.present.entry import LessonEntry
from generator.present.pages.home import FRONT
from generator.present.pages.lesson_page import meta_line
from generator.present.pages.page import Look, Surround
from generator.present.papers.table import packets
from generator.present.pictures.plums.files import flat_path
from generator.present.pictures.qr import qr_code
from generator.present.views.lesson_table import LessonRowView, LessonTableView
from generator.present.views.page import LinkView
from generator.present.words.families import ALLERGEN, MEASURE
from generator.present.words.say import Say

LESSONS = "lessons.html"
"""Path of the page in its language's folder."""
_LOOK = Look(("screen", "below", "lesson-table"))


def lesson_table(
    entries: Iterable[LessonEntry], untranslated: Iterable[LessonEntry], surround: Surround
) -> LessonTableView:
    """The page, which search engines need not list.

    Args:
        entries: the lessons of the page's language, in the order of its lists.
        untranslated: those that are in the site's first language and not in it.
        surround: of the language.
    """
    say = surround.say
    front = surround.address(FRONT).removesuffix(FRONT)
    return LessonTableView(
        page=surround.page(
            LESSONS, say("lessons_title"), say("lessons_says"), look=_LOOK, searched=False
        ),
        lessons=(
            *(_row(one, surround.folder, surround) for one in entries),
            *(_row(one, "", surround) for one in untranslated),
        ),
        front=front,
        qr=qr_code(front),
    )


def _row(entry: LessonEntry, folder: str, surround: Surround) -> LessonRowView:
    say = surround.say
    foreign = entry.language if entry.language != say.language else ""
    own = [say.language_name(foreign)] if foreign else []
    return LessonRowView(
        href=f"{folder}{entry.id}/index.html",
        title=Markup(entry.title),  # noqa: S704  # made safe when it was written down
        language=foreign,
        meta=" · ".join([meta_line(entry, say), *own]),
        cover=flat_path(entry.id) if entry.shares else "",
        topic=say.listed(tuple(say(MEASURE.key(one)) for one in entry.topics)),
        standards=entry.standards,
        moves=_moves(entry, say),
        allergens=_allergens(entry, say),
        film=_film(entry, say),
        also_in=_also_in(entry, surround),
        links=tuple(_links(entry, folder, surround)),
    )


def _moves(entry: LessonEntry, say: Say) -> Markup:
    if not entry.moves:
        return escape(say("lessons_no_moves"))
    names = Markup(" · ").join(map(Markup, entry.moves))
    return Markup("{} {}").format(say("lessons_moves"), names)


def _allergens(entry: LessonEntry, say: Say) -> str:
    if entry.allergens is None:
        return ""
    listed = say.listed(tuple(sorted(say(ALLERGEN.key(one)) for one in entry.allergens)))
    line = say("lessons_allergens", listed=listed) if listed else say("lessons_no_allergen")
    return line if entry.all_looked_at else f"{line} {say('lessons_not_looked_at')}"


def _film(entry: LessonEntry, say: Say) -> str:
    if not entry.filmed:
        return say("lessons_no_film")
    names = say.listed(tuple(map(say.language_name, entry.captions)))
    return say("lessons_captions", listed=names) if names else say("lessons_no_captions")


def _also_in(entry: LessonEntry, surround: Surround) -> str:
    others = (
        language
        for language, has in surround.elsewhere.items()
        if entry.id in has and language != entry.language
    )
    names = surround.say.listed(tuple(map(surround.say.language_name, others)))
    return surround.say("lessons_also_in", listed=names) if names else ""


def _links(entry: LessonEntry, folder: str, surround: Surround) -> Iterator[LinkView]:
    say = surround.say
    yield LinkView(f"{folder}{entry.id}/notes.html", say("notes_title"))
    yield LinkView(f"{folder}{entry.id}/projector.html", say("projector_title"))
    for size, path in packets(f"{folder}{entry.id}", surround):
        yield LinkView(path, say("lessons_packet", size=size))
