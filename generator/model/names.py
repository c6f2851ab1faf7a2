"""Short names made of words: small letters, digits and hyphens."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from hashlib import sha256

TOTAL = "total"
"""Stands for all rows together, where a row's name would stand; no row may take it."""
_KINDS = frozenset({"answer", "count", "eaten", "estimate", "gap", "left-over", "needed", TOTAL})
"""What numbers of a stop are called; a side or a food of such a name gets a word more."""
_LONGEST = 24
"""Letters of a name made of words: short enough for an address that is read aloud."""


@dataclass(frozen=True, slots=True)
class InnerIds:
    """The names inside a stop."""

    parts: tuple[str, ...] = ()
    """Of its rows, or of the foods of a day, in their order."""
    foods: tuple[tuple[str, ...], ...] = ()
    """Of the foods of each row, in the order of the sides, or of each food of a day."""
    sides: tuple[str, ...] = ()
    """Of the two sides of a comparison."""


def slug(text: str, longest: int = _LONGEST) -> str:
    """Small letters, digits and single hyphens, cut after a whole word where one fits.

    A text in letters that have no such spelling is named by a few signs that change when it does.
    """
    bare = unicodedata.normalize("NFKD", text.casefold())
    words = re.findall(r"[a-z0-9]+", "".join(c for c in bare if not unicodedata.combining(c)))
    name = ""
    for word in words:
        if name and len(name) + 1 + len(word) > longest:
            break
        name = dashed(name, word[:longest])
    return name or "x" + sha256(text.encode()).hexdigest()[:6]


def apart(name: str) -> str:
    """A name that is none of the kinds of number, beside which it stands."""
    return f"{name}-itself" if name in _KINDS else name


def dashed(*parts: str) -> str:
    """Names as one."""
    return "-".join(part for part in parts if part)
