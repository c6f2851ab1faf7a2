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
