"""The sheet by which somebody who knows reads a lesson, as a file in a folder; it is never part of the site."""

from __future__ import annotations

import json
from pathlib import Path

from generator.author.reviewed import NotItsLanguageError
from generator.check.claims.told import in_captions_alone, phrases
from generator.making import in_languages
from generator.present.papers.data import as_data
from generator.present.papers.paper import Size
from generator.present.papers.press import File, Part
from generator.present.papers.review import Claimed, review_view
from generator.present.words.foreign import unmarked
from generator.present.words.stamp import stamp_of
from generator.problems import LessonError, Weight
from generator.steps.library import checked_library
from generator.steps.surroundings import surroundings
from generator.steps.work import work_lesson
from generator.write.whole import write_bytes_whole

__all__ = ["Size", "write_review"]


def write_review(root: Path, lesson: str, language: str, size: Size, target: Path) -> Path:
    """Write the sheet; returns its file.

    Args:
        root: folder of the site.
        lesson: its folder's name.
        language: in which it is read; the lesson's own where it is empty.
        size: of the paper.
        target: the file to write, or the folder in which it gets a name of its own.

    Raises:
        LessonError: something in the lesson must be put right.
        NotItsLanguageError: the lesson is not there in that language.
        OSError: the file cannot be written.
    """
    library = checked_library(root)
    worked = work_lesson(root, f"lessons/{lesson}/lesson.yaml", library)
    if problems := [one for one in worked.problems if one.weight is Weight.MUST]:
        raise LessonError(problems)
    tag = language or next(iter(worked.results))
    if tag not in worked.results:
        listed = ", ".join(f"`{one}`" for one in worked.results)
        raise NotItsLanguageError(f"this lesson is not there in `{tag}`; it is in {listed}")
    around = surroundings(root, library)
    (made,) = in_languages({tag: worked.results[tag]}, around)
    result, say = made.result, made.surround.say
    view = as_data(review_view(made.told, Claimed(phrases(result), in_captions_alone(result))))
    stamp = stamp_of(json.dumps(view, ensure_ascii=False))
    title = f"{say('review_title')}: {unmarked(result.lesson.file.title)}"
    name = f"review-{lesson}-{tag}-{size.value}.pdf"
    file = target / name if target.is_dir() else target
    paper = File(title, size, large=False, path=name)
    data = around.press.paper(paper, [Part("review", view, stamp, "")], made.surround)
    return write_bytes_whole(file, data)
