"""What stands in braces in a text is a number of the lesson, or a number."""

from __future__ import annotations

from collections.abc import Iterator
from difflib import get_close_matches

from generator.check.held_texts import HeldText, held_texts
from generator.check.rule import rule_of_words
from generator.compute.result import LessonResult
from generator.model.figure import FigureKind
from generator.model.filling import Brace, Filled
from generator.problems import Problem


@rule_of_words
def braces_known(result: LessonResult) -> Iterator[Problem]:
    """Names in braces that no number has; nothing could be shown in their place."""
    for text in held_texts(result):
        for filled in text.braces:
            if filled.brace is Brace.UNKNOWN:
                place, _ = text.spot(filled.shown[0])
                what = f"`{{{filled.inside}}}` names no number of the lesson"
                yield Problem(place, what, _hint(result, text, filled))


def _hint(result: LessonResult, text: HeldText, filled: Filled) -> str:
    """The name that comes nearest, as it may be written there; how a brace is written where none does."""
    own = "" if text.stop is None else f"{result.lesson.stop_id(text.stop)}."
    names = {one.id for one in result.figures if one.kind is not FigureKind.MINUTES}
    names |= {name.removeprefix(own) for name in names}
    written = filled.inside.strip().replace("+", "_")
    if found := get_close_matches(written, sorted(names), 1, 0.6):
        return f"did you mean `{{{found[0]}}}`?"
    trace = f"see the names with: python3 generator trace {result.lesson.id}"
    return f"{trace}; a brace that is meant as a brace is written twice: `{{{{`"
