"""The front page: every lesson, with what a family and a teacher choose by."""

from __future__ import annotations

import re
from collections.abc import Iterable

from markupsafe import Markup

from generator.compute.result import LessonResult
from generator.present.lesson_page import meta_line
from generator.present.page import Surround
from generator.present.prose import inline
from generator.present.views import HomeView, LessonCardView


def home_view(results: Iterable[LessonResult], intro: Markup, surround: Surround) -> HomeView:
    """The lessons in the order of their folders."""
    title, below = _first_heading(intro)
    return HomeView(
        page=surround.page("index.html", ""),
        title=title or surround.site.programme,
        intro=below,
        lessons=tuple(_card(result, surround) for result in results),
    )


def _first_heading(intro: Markup) -> tuple[Markup, Markup]:
    """The heading an introduction begins with, if it has one, and what stands below it."""
    found = re.match(r"\s*<h1[^>]*>(.*?)</h1>\s*", intro, re.DOTALL)
    return (Markup(found[1]), Markup(intro[found.end() :])) if found else (Markup(""), intro)  # noqa: S704  # parts of safe HTML


def _card(result: LessonResult, surround: Surround) -> LessonCardView:
    file, say = result.lesson.file, surround.say
    measures = dict.fromkeys(one.stop.measure for one in result.comparisons.values())
    return LessonCardView(
        href=f"{result.lesson.id}/index.html",
        title=file.title,
        summary=inline(file.summary),
        meta=meta_line(result, say),
        topic=say.listed(tuple(say(f"measure_{measure}") for measure in measures)),
    )
