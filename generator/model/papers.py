"""Which papers a site makes as files, in one line of its ``site.yaml``."""

from __future__ import annotations

from enum import StrEnum


class PaperWord(StrEnum):
    """A word of that line: a paper, a size to keep to, or large print besides."""

    WORKSHEET = "worksheet"
    ANSWERS = "answers"
    CARDS = "cards"
    NOTES = "notes"
    FAMILY = "family"
    PACKET = "packet"
    """All papers of a lesson in one file."""
    A4 = "a4"
    """Only A4, unless ``letter`` stands there too."""
    LETTER = "letter"
    """Only US Letter, unless ``a4`` stands there too."""
    LARGE = "large"
    """Each paper in large print as well."""


USUAL = (PaperWord.WORKSHEET, PaperWord.ANSWERS, PaperWord.PACKET)
"""What a site makes that says nothing of papers: under 1 MB a lesson, and a test measures it."""
HOW = frozenset({PaperWord.A4, PaperWord.LETTER, PaperWord.LARGE})
"""Words that say how papers are made, and name none."""


def papers_named(words: tuple[PaperWord, ...]) -> tuple[PaperWord, ...]:
    """The papers that a line means: those it names, or the usual ones where it says only how; none of an empty one."""
    named = tuple(word for word in words if word not in HOW)
    return named or (USUAL if words else ())
