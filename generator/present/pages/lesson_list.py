"""The list of lessons that a hand-written page asks for with ``{lessons}`` on a line of its own."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from generator.compute.result import LessonResult
from generator.present.pages.home_filters import topics_of
from generator.present.pages.page import Surround
from generator.present.views.home import LessonListView, ListedView

LIST = "<p>{lessons}</p>"
"""What Markdown makes of the line."""


def lesson_list(
    results: Sequence[LessonResult], originals: Iterable[LessonResult], surround: Surround
) -> LessonListView:
    """Every lesson with what a teacher chooses it by; last those that are in their own language only.

    Args:
        results: the lessons in the page's language.
        originals: all lessons in the language they are written in; nothing where that is the page's.
    """
    here = {result.lesson.id for result in results}
    others = tuple(one for one in originals if one.lesson.id not in here)
    return LessonListView((*_listed(results, surround), *_untranslated(others, surround)))


def _listed(results: Iterable[LessonResult], surround: Surround) -> Iterator[ListedView]:
    for result in results:
        href = f"{result.lesson.id}/index.html"
        yield ListedView(href, result.lesson.file.title, "", "", *_chosen_by(result, surround))


def _untranslated(results: Iterable[LessonResult], surround: Surround) -> Iterator[ListedView]:
    """Lessons of the first language on a page of another."""
    for result in results:
        lesson = result.lesson
        href = f"{surround.root('index.html')}{lesson.id}/index.html"
        name = surround.say.language_name(lesson.language)
        topic = _topic(result, surround)
        yield ListedView(href, lesson.file.title, lesson.language, name, topic, "")


def _chosen_by(result: LessonResult, surround: Surround) -> tuple[str, str]:
    """What a lesson compares, and the arithmetic it needs: in its own words, else by its standards."""
    file, known = result.lesson.file, surround.site.standards
    first = surround.say.language == surround.site.languages[0]
    says = [known[code].says if first and code in known else code for code in file.standards]
    return _topic(result, surround), file.arithmetic or " ".join(says)


def _topic(result: LessonResult, surround: Surround) -> str:
    return surround.say.listed(tuple(surround.say(f"measure_{one}") for one in topics_of(result)))
