"""A number as it is said or written in a text."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal


@dataclass(frozen=True, slots=True)
class Number:
    """A number found in a text."""

    value: Decimal
    """What it stands for."""
    start: int
    """Where it begins in the text."""
    end: int
    """Where it ends in the text."""
    text: str
    """As written: ``410``, ``four hundred ten``."""
    in_words: bool
    """Whether it is written in words."""
    bare: bool = True
    """Whether it names its own size; not so in ``a hundred``, which may mean *very many*."""
