"""A short mark that says which version of a lesson a piece of paper was printed from."""

from __future__ import annotations

from hashlib import sha256

from generator.compute.result import LessonResult

_LETTERS = "23456789ABCDEFGHJKMNPQRSTVWXYZ"
"""Digits and capitals that are not taken for one another when read aloud."""


def print_stamp(result: LessonResult) -> str:
    """Six signs of the lesson's text and of every number shown: either changes, the stamp changes."""
    shown = [
        str(held.shown.value)
        for one in result.comparisons.values()
        for row in one.rows
        for held in row.sides
    ]
    text = "\n".join([*result.lesson.places.lines, *shown])
    number = int.from_bytes(sha256(text.encode()).digest()[:8])
    signs = ""
    for _ in range(6):
        number, rest = divmod(number, len(_LETTERS))
        signs += _LETTERS[rest]
    return signs
