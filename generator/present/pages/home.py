"""The front page: every lesson, with what a family and a teacher choose by."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace

from markupsafe import Markup

from generator.compute.result import LessonResult
from generator.present.pages.home_filters import filters, topics_of
from generator.present.pages.lesson_page import meta_line
from generator.present.pages.page import Surround
from generator.present.views.home import HomeView, LessonCardView
from generator.present.words.prose import inline


def home_view(results: Iterable[LessonResult], intro: Markup, surround: Surround) -> HomeView:
    """The lessons in the order of their folders."""
    title, below = _first_heading(intro)
    lessons = tuple(_card(result, surround) for result in results)
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


def _card(result: LessonResult, surround: Surround) -> LessonCardView:
    lesson, say = result.lesson, surround.say
    file, topics = lesson.file, topics_of(result)
    others = (one for one, has in surround.elsewhere.items() if lesson.id in has)
    return LessonCardView(
        href=f"{lesson.id}/index.html",
        title=file.title,
        summary=inline(file.summary),
        meta=meta_line(result, say),
        topic=say.listed(tuple(say(f"measure_{topic}") for topic in topics)),
        grades=" ".join(map(str, range(file.grades.first, file.grades.last + 1))),
        minutes=file.minutes,
        topics=" ".join(topics),
        languages=" ".join((say.language, *others)),
    )
