"""The pages a lesson has, by their addresses, before any of them is made."""

from __future__ import annotations

from generator.compute.result import LessonResult
from generator.present.pages.page import Build
from generator.present.pages.table import START, lesson_pages


def lesson_addresses(result: LessonResult) -> dict[str, frozenset[str] | None]:
    """Every page of a lesson in its folder; of the lesson itself the ids of its stops, of others nothing.

    What a stop was called before is among them: such a link leads to it.

    Pages for filming are left out: whether they are published, the site can change its mind about. So
    is what other sites show, which nobody goes to from here.
    """
    lesson = result.lesson
    stops = {lesson.stop_id(index) for index in range(len(lesson.file.stops))}
    ids = frozenset(stops.union(*(stop.formerly for stop in lesson.file.stops)))
    pages = lesson_pages(result, frozenset({Build.PUBLISHED}))
    return {one.name: ids if one is START else None for one in pages if not one.framed}
