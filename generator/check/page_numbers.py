"""Numbers and claims of a page written by hand, where it leads to a lesson."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from posixpath import normpath

from generator.check.claims import claims_in
from generator.check.held_texts import HeldText, Medium
from generator.check.page_words import NAMED
from generator.check.spoken_numbers import numbers_in
from generator.compute.result import LessonResult
from generator.language import language_of
from generator.problems import Place, Problem

_ENTRY = re.compile(r"(?m)^[ \t]*(?:[-*+]|\d+[.)])[ \t]+|\n[ \t]*\n")
"""What parts a page: an empty line, and the sign of an entry of a list."""
_LINK = re.compile(r"\]\(\s*<?([^)\s>]+)")


@dataclass(frozen=True, slots=True)
class HandPage:
    """A page as it is written."""

    path: str
    """From the site's root: ``lessons/es/teachers.md``."""
    text: str
    """Its Markdown."""
    language: str
    """Tag of BCP 47."""


def page_numbers(page: HandPage, lessons: Mapping[str, LessonResult]) -> Iterator[Problem]:
    """Questions about the passages that lead to one lesson; of others nobody knows what they tell of.

    Args:
        page: of the site.
        lessons: by the names of their folders, in the page's language.
    """
    said = NAMED.sub(lambda found: re.sub(r"\S", " ", found[0]), page.text)
    for start, end in _passages(page.text):
        led = {_lesson(found[1]) for found in _LINK.finditer(page.text, start, end)}
        known = [lessons[name] for name in sorted(led & lessons.keys())]
        if len(known) == 1:
            text = _held(page, said, start, end)
            yield from numbers_in(known[0], (text,), {})
            yield from claims_in(known[0], (text,))


def _passages(text: str) -> Iterator[tuple[int, int]]:
    """Where each paragraph or entry of a list begins and ends."""
    last = 0
    for found in _ENTRY.finditer(text):
        yield last, found.start()
        last = found.end()
    yield last, len(text)


def _lesson(address: str) -> str:
    """The folder that an address on the site leads into: ``../river-walk/index.html``."""
    parts = [one for one in normpath(address.partition("#")[0]).split("/") if one != ".."]
    return next((one for one in reversed(parts) if "." not in one), "")


def _held(page: HandPage, said: str, start: int, end: int) -> HeldText:
    """A passage with its places."""

    def spot(offset: int) -> tuple[Place, str]:
        at = start + offset
        line = said.count("\n", 0, at) + 1
        return Place(page.path, line, at - said.rfind("\n", 0, at)), ""

    flowing = said[start:end].replace("\n", " ")
    return HeldText(flowing, language_of(page.language), Medium.PAGE, None, spot)
