"""Quotes of a word processor around a whole text: YAML knows them not, so the page shows them."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.as_typed import typed_texts
from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight

_PAIRS = {"“": "”", "„": "“", "‘": "’", "‚": "‘", "«": "»", "”": "”"}
_SIGNS = set(_PAIRS) | set(_PAIRS.values())
_APOSTROPHE = "’"


@rule
def no_curly_quotes(result: LessonResult) -> Iterator[Problem]:
    """A question for each text without straight quotes that stands in others from end to end."""
    for one in typed_texts(result):
        text = one.text
        inside = set(text[1:-1]) - {_APOSTROPHE}
        if _PAIRS.get(text[:1]) != text[-1:] or len(text) < 2 or inside & _SIGNS:
            continue
        if one.begins_with == text[0]:
            what = f"the quotes `{text[0]}` and `{text[-1]}` around this text are shown on the page"
            hint = 'YAML takes straight ones, "…", or none; in straight ones, yours are meant to be shown'
            yield Problem(one.places.at(*one.path), what, hint, Weight.QUESTION)
