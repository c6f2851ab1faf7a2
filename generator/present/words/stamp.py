"""A print stamp: six signs of what a sheet prints, so that a sheet printed from anything else bears another."""

from __future__ import annotations

from hashlib import sha256

LETTERS = "23456789ABCDEFGHJKMNPQRSTVWXYZ"
"""Digits and capitals that are not taken for one another when read aloud."""
SIGNS = 6


def stamp_of(printed: str) -> str:
    """The stamp of a sheet; two sheets of a site bear the same by chance once in 700 million.

    Args:
        printed: everything it prints, in its order.
    """
    number = int.from_bytes(sha256(printed.encode()).digest()[:8])
    signs = ""
    for _ in range(SIGNS):
        number, rest = divmod(number, len(LETTERS))
        signs += LETTERS[rest]
    return signs
