"""A translation begun beside its lesson, and marked when the two agree."""

from __future__ import annotations

from pathlib import Path

from generator.author.translation_text import first_draft, with_marks
from generator.compute.lacking_names import lacking_names
from generator.model.library import Library
from generator.model.texts import translatable
from generator.problems import LessonError, Place, Problem
from generator.steps.work import work
from generator.write.translation_file import write_draft, write_marks


def begin_translation(root: Path, lesson: str, language: str) -> tuple[Path, int]:
    """Write a file with every text of a lesson to translate.

    Returns:
        the file, and how many names the library lacks for the lesson; they are listed in it.

    Raises:
        LessonError: as ``work``; the site has no such language; the file is there already.
    """
    worked = work(root, lesson)
    _refuse_unknown(language, worked.library)
    path = f"lessons/{lesson}/lesson.{language}.yaml"
    result, places = worked.results[0], worked.library.places
    lacking = tuple((places[one.at], one) for one in lacking_names(result, language))
    return write_draft(root, path, first_draft(result.lesson, language, lacking)), len(lacking)


def mark_translated(root: Path, lesson: str, language: str) -> tuple[Path, int]:
    """Write down that a translation agrees with its lesson as it stands.

    Returns:
        its file, and how many texts it still lacks.

    Raises:
        LessonError: as ``work``; there is no such translation.
    """
    worked = work(root, lesson)
    _refuse_unknown(language, worked.library)
    read = worked.results[0].lesson
    path = f"lessons/{lesson}/lesson.{language}.yaml"
    if language not in read.translations:
        hint = f"begin it with: python3 generator translate {lesson} {language}"
        raise LessonError([Problem(Place(path), "there is no such translation", hint)])
    text, made = (root / path).read_text("utf-8-sig"), read.translations[language]
    lacking = sum(key not in made.texts for key, _, _ in translatable(read))
    return write_marks(root, path, with_marks(text, read, made)), lacking


def _refuse_unknown(language: str, library: Library) -> None:
    if language not in library.site.languages[1:]:
        what = f"the site has no translations into `{language}`"
        hint = f"add it to `languages:`; there are {', '.join(library.site.languages)}"
        raise LessonError([Problem(library.places["languages", 0], what, hint)])
