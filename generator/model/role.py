"""A role, such as *registered dietitian*: it may be kept and published, and nobody's name may."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Annotated

from pydantic import AfterValidator, StringConstraints

from generator.model.text_marks import For, TextMark

LONGEST_ROLE = 60
"""Signs of a role: what it is and, where it matters, of whom."""
_WORD = re.compile(r"[^\W\d_]+(?:['’.-][^\W\d_]+)*\.?")
# fmt: off
_TITLES = frozenset({
    "dr", "mr", "mrs", "ms", "miss", "mx", "prof",
    "dra", "sr", "sra", "srta", "don", "doña", "señor", "señora", "señorita",
})
# fmt: on
"""Words that come before a name and before no role."""
_LONGEST_LETTERS = 5
"""Capitals that stand for an office or a degree: RDN, SNAP, CDCES."""
_REACHES = re.compile(r"@|\d{3}|https?:|www\.")
"""What reaches one person: an address, a telephone."""
_WAY_OUT = (
    "no name is kept; write what the reader is, in small letters, such as `registered dietitian`"
)


def not_a_name(role: str) -> str:
    """The role itself.

    A name cannot be told from a role for certain. Capitals tell most of them apart, so a role is
    written in small letters; letters that stand for an office or a degree may stay.

    Raises:
        ValueError: it looks like somebody's name, or leads to somebody; a sentence and its way out.
    """
    if _REACHES.search(role):
        raise ValueError(f"leads to one person: {_WAY_OUT}")
    words = _WORD.findall(role)
    if not words:
        raise ValueError(f"says no role: {_WAY_OUT}")
    letters = [word.isupper() and len(word) > 1 for word in words]
    beside = any(one and other for one, other in pairwise(letters))
    if beside or any(map(_like_a_name, words)):
        raise ValueError(f"may be somebody's name: {_WAY_OUT}")
    return role


def _like_a_name(word: str) -> bool:
    """Whether a word begins with a capital as names do, comes before a name, or is one letter of it."""
    if word.rstrip(".").casefold() in _TITLES:
        return True
    if word.isupper():
        return len(word) > _LONGEST_LETTERS or word.endswith(".")
    return word[0].isupper()


Role = Annotated[
    str,
    StringConstraints(strip_whitespace=True, min_length=1, max_length=LONGEST_ROLE),
    AfterValidator(not_a_name),
    TextMark(For.TEACHER, in_sentences=False, longest=LONGEST_ROLE),
]
"""What somebody is who read a lesson, and never who."""
