"""What a thing of the library is called in a language, and whether that language lacks a name for it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Generic, TypeVar

Words = TypeVar("Words")

FALLBACK = "en"
"""Language that every food, portion and move of the library has words in."""


@dataclass(frozen=True, slots=True)
class Wording(Generic[Words]):
    """Words for a page in one language."""

    words: Words
    """In the language asked for, or in the one that has them."""
    foreign: bool
    """Whether they are those of ``FALLBACK``, because the page's language has none."""


def wording(by_language: Mapping[str, Words], language: str) -> Wording[Words]:
    """The words in a language, else the English ones, told apart.

    Args:
        by_language: words by language tag; ``FALLBACK`` is always among them.
        language: tag of BCP 47; words without a region serve every region.
    """
    own = by_language.get(language) or by_language.get(language.partition("-")[0])
    return Wording(own, foreign=False) if own else Wording(by_language[FALLBACK], foreign=True)
