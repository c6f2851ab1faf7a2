"""What the lists of lessons say of one, so that a list can be made without the lesson itself."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from markupsafe import escape

from generator.compute.finish_layout import finish_layout, former_marks
from generator.compute.result import LessonResult
from generator.model.film import FILM_KEYS
from generator.model.food import NOT_LOOKED_AT, FoodEntry
from generator.model.grades import Grades
from generator.model.lesson import Lesson
from generator.present.pictures.plums.hung import hung
from generator.present.words.foreign import of_library
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
    moves: tuple[str, ...]
    """Names of its moves, each once; safe HTML."""
    allergens: tuple[str, ...] | None
    """Major allergens in its foods, by their names in the library; nothing where it shows no food."""
    all_looked_at: bool
    """Whether somebody has looked at the allergens of each."""
    filmed: bool
    """Whether it has a recording, its own or on another site."""
    captions: tuple[str, ...]
    """Tags of the languages its recording has captions in."""
    order: int | None
    """Its place in the lists, where somebody chose one."""
    marks: tuple[int, int]
    """Of the lesson and of its numbers, as finish codes hold them."""
    former_marks: tuple[tuple[int, ...], tuple[int, ...]]
    """The same, as codes hold them that were shown under older names."""


def film_sizes(lesson: Lesson) -> tuple[int, ...]:
    """Bytes of the film that a lesson shows, and of the smallest one it offers if that is another."""
    sizes = [lesson.films[key].size for key in FILM_KEYS if key in lesson.films]
    return (sizes[0], *([min(sizes)] if min(sizes) < sizes[0] else [])) if sizes else ()


def lesson_entry(result: LessonResult) -> LessonEntry:
    """What is said of a lesson in the lists of its language."""
    lesson, file = result.lesson, result.lesson.file
    layout = finish_layout(result)
    foods = [held.food.entry for held in result.holdings if held.food]
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
        moves=_moves(result),
        allergens=_allergens(foods) if foods else None,
        all_looked_at=all(food.allergens != NOT_LOOKED_AT for food in foods),
        filmed=file.video is not None,
        captions=tuple(file.video.captions) if file.video else (),
        order=file.order,
        marks=(layout.lesson, layout.numbers),
        former_marks=former_marks(result),
    )


def _moves(result: LessonResult) -> tuple[str, ...]:
    """What its moves are called, marked where its language lacks a name."""
    texts = (one.move.text(result.lesson.language) for one in result.moved)
    names = (of_library(one.words.name) if one.foreign else one.words.name for one in texts)
    return tuple(dict.fromkeys(str(escape(name)) for name in names))


def _allergens(foods: Iterable[FoodEntry]) -> tuple[str, ...]:
    return tuple(sorted({allergen for food in foods for allergen in food.contains}))


def in_chosen_order(entries: Iterable[LessonEntry]) -> tuple[LessonEntry, ...]:
    """As the lists have them; equal ones stay as they come."""
    return tuple(sorted(entries, key=lambda entry: in_lists(entry.order)))


def in_lists(order: int | None) -> tuple[bool, int]:
    """What lists are sorted by: lessons with a place of their own by that, then the others."""
    return order is None, order or 0
