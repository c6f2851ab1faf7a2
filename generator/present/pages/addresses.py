"""The pages a lesson has, by their addresses, before any of them is made."""

from __future__ import annotations

from generator.compute.result import LessonResult


def lesson_addresses(result: LessonResult) -> dict[str, frozenset[str] | None]:
    """Every page of a lesson in its folder; of the lesson itself the ids of its stops, of others nothing.

    ``Presenter.lesson`` makes them; a test holds the two together.
    """
    lesson = result.lesson
    stops = frozenset(lesson.stop_id(index) for index in range(len(lesson.file.stops)))
    names = ["worksheet", "answers", "practice", "notes"]
    names += ["cards"] if result.movements else []
    names += ["transcript"] if lesson.captions else []
    return {"index.html": stops, **{f"{name}.html": None for name in names}}
