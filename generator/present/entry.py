"""What the lists of lessons say of one, so that a list can be made without the lesson itself."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from markupsafe import escape

from generator.compute.finish_layout import finish_layout
from generator.compute.result import LessonResult
from generator.model.film import FILM_KEYS
from generator.model.grades import Grades
from generator.model.lesson import Lesson
from generator.present.pictures.plums.hung import hung
from generator.present.words.prose import inline


@dataclass(frozen=True, slots=True)
class LessonEntry:
    """One lesson in one language."""

    id: str
    """Its folder."""
    language: str
    title: str
    summary: str
    """Both are safe HTML: a list is made long after the texts were marked as foreign."""
    grades: Grades
    minutes: int
    topics: tuple[str, ...]
    """The measures it compares, each once."""
    standards: tuple[str, ...]
    """Codes."""
    film_sizes: tuple[int, ...]
    """Bytes of the film, and of the smallest file it can be watched in where there is one."""
    arithmetic: str
    """What a child must be able to do, where the lesson says so; safe HTML."""
    draft: bool
    """Whether only a preview shows it."""
    shares: tuple[float, ...]
    """How long the threads of its cover are, 1 for the longest; none where it compares nothing."""
    order: int | None
    """Its place in the lists, where somebody chose one."""
    marks: tuple[int, int]
    """Of the lesson and of its numbers, as finish codes hold them."""


def film_sizes(lesson: Lesson) -> tuple[int, ...]:
    """Bytes of the film that a lesson shows, and of the smallest one it offers if that is another."""
    sizes = [lesson.films[key].size for key in FILM_KEYS if key in lesson.films]
    return (sizes[0], *([min(sizes)] if min(sizes) < sizes[0] else [])) if sizes else ()


def lesson_entry(result: LessonResult) -> LessonEntry:
    """What is said of a lesson in the lists of its language."""
    lesson, file = result.lesson, result.lesson.file
    layout = finish_layout(result)
    measures = (str(one.stop.measure) for one in result.comparisons.values())
    return LessonEntry(
        id=lesson.id,
        language=lesson.language,
        title=str(escape(file.title)),
        summary=str(inline(file.summary)),
        grades=file.grades,
        minutes=file.minutes,
        topics=tuple(dict.fromkeys(measures)),
        standards=file.standards,
        film_sizes=film_sizes(lesson),
        arithmetic=str(escape(file.arithmetic or "")),
        draft=file.draft,
        shares=tuple(float(row.share) for row in hung(result)),
        order=file.order,
        marks=(layout.lesson, layout.numbers),
    )


def in_chosen_order(entries: Iterable[LessonEntry]) -> tuple[LessonEntry, ...]:
    """As the lists have them; equal ones stay as they come."""
    return tuple(sorted(entries, key=lambda entry: in_lists(entry.order)))


def in_lists(order: int | None) -> tuple[bool, int]:
    """What lists are sorted by: lessons with a place of their own by that, then the others."""
    return order is None, order or 0
