"""A link in a lesson leads into the site, to a safe page elsewhere, or to a mailbox."""

from __future__ import annotations

import re
from collections.abc import Iterator

from generator.check.rule import rule_of_words
from generator.check.texts import place_inside
from generator.compute.result import LessonResult
from generator.model.address import is_allowed
from generator.model.texts import lesson_texts
from generator.problems import Problem, Weight

_LINK = re.compile(r"\]\(\s*<?([^\s()<>]+)|<([a-z][a-z0-9+.-]*:[^\s<>]*)>", re.IGNORECASE)


@rule_of_words
def safe_links(result: LessonResult) -> Iterator[Problem]:
    """Questions about links that the page shows as plain words."""
    for one in lesson_texts(result.lesson.file):
        place, text = result.lesson.places.at(*one.path), one.text
        for found in _LINK.finditer(text):
            address = found[1] or found[2]
            if not is_allowed(address):
                where = place_inside(result.lesson, place, text, found.start(1 if found[1] else 2))
                what = (
                    f"the link `{address}` is not made, for it leads to where anybody can change it"
                )
                hint = "write https://, mailto:, or an address of this site"
                yield Problem(where, what, hint, Weight.QUESTION)
