"""Stamps as they are typed from paper: signs that look alike are taken for one."""

from __future__ import annotations

from generator.present.words.stamp import LETTERS

_LOOK = ("8B", "5S", "2Z", "6G", "QOD0", "VU", "JIL1")
"""Each is read as the first; our choice, for letters of a home printer seen at arm's length."""
ALIKE = str.maketrans({sign: group[0] for group in _LOOK for sign in group})


SIGNS = tuple(sorted(set(LETTERS.translate(ALIKE))))
"""Every sign that is left."""


def alike(stamp: str) -> str:
    """A stamp as it is looked up; the page does the same (``theme/js/stamp-signs.js``).

    >>> alike("k7q-2f0")
    'K7Q2FQ'
    """
    return "".join(filter(str.isalnum, stamp.upper())).translate(ALIKE)
