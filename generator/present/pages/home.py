"""The front page: every lesson, with what a family and a teacher choose by."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace

from markupsafe import Markup

from generator.present.entry import LessonEntry
from generator.present.pages.home_filters import filters
from generator.present.pages.lesson_page import meta_line
from generator.present.pages.page import Surround
from generator.present.views.home import HomeView, LessonCardView
from generator.present.words.families import MEASURE


def home_view(entries: Iterable[LessonEntry], intro: Markup, surround: Surround) -> HomeView:
    """The lessons in the order of their folders."""
    title, below = _first_heading(intro)
    lessons = tuple(_card(entry, surround) for entry in entries)
    page = surround.page("index.html", surround.say("all_lessons"))
    return HomeView(
        page=replace(
            page,
            script=f"{page.root}assets/home-{page.language}.js",
        ),
        title=title or surround.site.programme,
        intro=below,
        filters=filters(lessons, surround.say),
        lessons=lessons,
        count=surround.say("lessons", n=len(lessons)),
    )


def _first_heading(intro: Markup) -> tuple[Markup, Markup]:
    """The heading an introduction begins with, if it has one, and what stands below it."""
    found = re.match(r"\s*<h1[^>]*>(.*?)</h1>\s*", intro, re.DOTALL)
    return (Markup(found[1]), Markup(intro[found.end() :])) if found else (Markup(""), intro)  # noqa: S704  # parts of safe HTML


def _card(entry: LessonEntry, surround: Surround) -> LessonCardView:
    say, grades = surround.say, entry.grades
    others = (one for one, has in surround.elsewhere.items() if entry.id in has)
    return LessonCardView(
        href=f"{entry.id}/index.html",
        title=entry.title,
        summary=Markup(entry.summary),  # noqa: S704  # made safe when it was written down
        meta=meta_line(entry, say),
        topic=say.listed(tuple(say(MEASURE.key(topic)) for topic in entry.topics)),
        grades=" ".join(map(str, range(grades.first, grades.last + 1))),
        minutes=entry.minutes,
        topics=" ".join(entry.topics),
        languages=" ".join((say.language, *others)),
    )
