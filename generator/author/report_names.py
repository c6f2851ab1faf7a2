"""What the lessons that codes name are called on this site."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path

from generator.engine.inputs import LESSON
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.texts import in_language
from generator.present.report.names import LessonNames, lesson_names
from generator.present.words.say import Say
from generator.read.lesson import read_lesson
from generator.read.lesson_head import former_names_from, head_from, head_text
from generator.steps.filled import worked_out
from generator.steps.work import lesson_ids


def site_names(
    root: Path, lessons: Iterable[str], library: Library, say: Say
) -> Mapping[str, LessonNames]:
    """By id, also one of before, what lessons are called; without those that the site does not have.

    Args:
        root: folder of the site.
        lessons: ids.
        library: of the site.
        say: the language; a lesson without a translation into it keeps its own words.
    """
    here = {one: one for one in lesson_ids(root)}
    heads = {one: head_text(root, f"lessons/{one}/{LESSON}") for one in here}
    had = {name: one for one in here for name in former_names_from(heads[one])}
    now = had | here
    return {one: _names(root, now[one], library, say) for one in lessons if one in now}


def _names(root: Path, lesson: str, library: Library, say: Say) -> LessonNames:
    """The names of a lesson; of one that cannot be read, its title alone."""
    path = f"lessons/{lesson}/{LESSON}"
    read = read_lesson(root, path, library, filmed=False)
    if not isinstance(read, Lesson):
        head = head_from(head_text(root, path))
        return LessonNames(head.title if head else lesson, {}, {})
    if say.language in read.translations:
        read = in_language(read, say.language, missing=str, stale=str)
    return lesson_names(worked_out(read, library), say)
