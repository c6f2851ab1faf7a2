"""The front page: every lesson, with what a family and a teacher choose by."""

from __future__ import annotations

from collections.abc import Iterable

from markupsafe import Markup

from generator.present.assets.brought import with_brought
from generator.present.entry import LessonEntry
from generator.present.pages.home_filters import filters, without_energy
from generator.present.pages.lesson_page import costs, meta_line
from generator.present.pages.page import ICON, Look, Surround
from generator.present.pictures.plums.files import cover_path, flat_path
from generator.present.updates.paths import UPDATES
from generator.present.views.home import CoverView, GroupView, HomeView, LessonCardView
from generator.present.words.families import MEASURE
from generator.present.words.hung import hung_in_words
from generator.present.words.prose import first_words
from generator.present.words.say import Say

FRONT = "index.html"
"""Path of the front page in its language's folder."""
MANY = 10
"""From so many lessons on they stand in groups and are filtered; fewer are seen at once."""
CARE = "care.html"
"""Path of the page of care; it is kept with a lesson, because who is hurt may have no network."""
PROSE = Look(("screen", "below", "reading"))
"""What pages written by hand begin with."""
_LOOK = Look(("screen", "below", "home"), "home-{locale}")


def home_view(
    entries: Iterable[LessonEntry], intro: Markup, surround: Surround, *, headed: bool
) -> HomeView:
    """The lessons as they come, below an introduction with its own heading or without."""
    say, entries = surround.say, tuple(entries)
    lessons = tuple(_card(entry, surround) for entry in entries)
    many = len(lessons) >= MANY
    return HomeView(
        page=surround.page(FRONT, say("all_lessons"), first_words(intro), look=_LOOK),
        title="" if headed else surround.site.name_in(say.language),
        intro=intro,
        filters=filters(lessons, say) if many else (),
        without=("", "") if many else without_energy(lessons, say),
        groups=_groups(entries, lessons, say) if many else _together(lessons),
        count=say("lessons", n=len(lessons)),
        updates=surround.folder + UPDATES,
    )


def _together(lessons: tuple[LessonCardView, ...]) -> tuple[GroupView, ...]:
    return (GroupView("", lessons),) if lessons else ()


def _groups(
    entries: Iterable[LessonEntry], lessons: Iterable[LessonCardView], say: Say
) -> tuple[GroupView, ...]:
    """By what a lesson compares first; groups and what stands in them keep the order of the lessons."""
    found: dict[str, list[LessonCardView]] = {}
    for entry, lesson in zip(entries, lessons, strict=True):
        title = (
            say(MEASURE.key(entry.topics[0])) if entry.topics else say("lessons_of_another_kind")
        )
        found.setdefault(title, []).append(lesson)
    return tuple(GroupView(title, tuple(held)) for title, held in found.items())


def front_needs(surround: Surround) -> tuple[str, ...]:
    """What the front page loads, whatever lessons it lists, from the site's root."""
    page = surround.page(FRONT, "", look=_LOOK)
    clear = f"assets/clear-{page.language}.js"
    return with_brought((*page.styles, page.script, clear, ICON), surround.say.locale)


def care_needs(surround: Surround) -> tuple[str, ...]:
    """The hand-written page of care in a language, and what it loads, from the site's root; nothing where there is none."""
    if CARE not in dict(surround.links):
        return ()
    page = surround.page(CARE, "", look=PROSE)
    return (surround.folder + CARE, *page.styles, page.script)


def _card(entry: LessonEntry, surround: Surround) -> LessonCardView:
    say, grades = surround.say, entry.grades
    others = (one for one, has in surround.elsewhere.items() if entry.id in has)
    return LessonCardView(
        id=entry.id,
        href=f"{surround.folder}{entry.id}/index.html",
        title=Markup(entry.title),  # noqa: S704  # made safe when it was written down
        summary=Markup(entry.summary),  # noqa: S704  # made safe when it was written down
        meta=meta_line(entry, say) + costs(entry.film_sizes, say),
        topic=say.listed(tuple(say(MEASURE.key(topic)) for topic in entry.topics)),
        grades=" ".join(map(str, range(grades.first, grades.last + 1))),
        minutes=entry.minutes,
        topics=" ".join(entry.topics),
        cover=_cover(entry, say),
        languages=" ".join((say.language, *others)),
    )


def _cover(entry: LessonEntry, say: Say) -> CoverView | None:
    if not entry.shares:
        return None
    says = hung_in_words(entry.shares, say)
    return CoverView(cover_path(entry.id), flat_path(entry.id), says)
