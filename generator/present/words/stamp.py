"""A short mark that says which version of a lesson a piece of paper was printed from."""

from __future__ import annotations

from functools import lru_cache
from hashlib import sha256

from generator.compute.result import LessonResult
from generator.model.texts import lesson_texts
from generator.present.pages.in_lesson import PageInLesson

SHEETS = ("worksheet", "answers", "cards", "practice", "notes", "family", "lesson", "projector")
"""What is printed of a lesson; the last two are pages that can be printed too."""

_LETTERS = "23456789ABCDEFGHJKMNPQRSTVWXYZ"
"""Digits and capitals that are not taken for one another when read aloud."""


@lru_cache(maxsize=8)  # most pages of a lesson bear it
def print_stamp(result: LessonResult) -> str:
    """Six signs of the lesson's text, in the page's language too, and of every number shown.

    Whichever of them changes, the stamp changes.
    """
    shown = [str(figure.value) for figure in result.figures]
    words = [one.text for one in lesson_texts(result.lesson.file)]
    text = "\n".join([*result.lesson.places.lines, *words, *shown])
    number = int.from_bytes(sha256(text.encode()).digest()[:8])
    signs = ""
    for _ in range(6):
        number, rest = divmod(number, len(_LETTERS))
        signs += _LETTERS[rest]
    return signs


def sheet_stamps(told: PageInLesson) -> dict[str, str]:
    """By sheet that the lesson has in its language, the stamp that is printed on it.

    This is the one place that says so: pages, papers, the record and the facts of a lesson ask here.
    """
    has = {"cards": bool(told.result.moved)}
    return {sheet: print_stamp(told.result) for sheet in SHEETS if has.get(sheet, True)}
