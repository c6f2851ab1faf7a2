"""A ``#`` that ends a text: what stands behind it is a comment to YAML, and is lost."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.as_typed import typed_texts
from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight


@rule
def nothing_cut_off(result: LessonResult) -> Iterator[Problem]:
    """A must where the ``#`` belongs to a word, such as ``#1``; a question where it may begin a comment."""
    for one in typed_texts(result):
        place = one.places.cut.get(one.path)
        if place is None:
            continue
        line = one.places.lines[place.line - 1] if place.line <= len(one.places.lines) else ""
        lost = line[place.column - 1 :].rstrip()
        of_word = lost[1:2].isalnum()
        what = f"the text ends before `{lost[:40]}`, for YAML takes what follows a # as a comment"
        hint = "put the whole text in quotes"
        if not of_word:
            hint += " if the page should show it, or give the comment a line of its own"
        yield Problem(place, what, hint, Weight.MUST if of_word else Weight.QUESTION)
