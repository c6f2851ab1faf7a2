"""A number as it is said or written in a text."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from generator.model.measure import Measure


@dataclass(frozen=True, slots=True)
class Number:
    """A number found in a text."""

    value: Decimal
    """What it stands for; thirds as near as a decimal comes."""
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
    unit: str = ""
    """The unit inside of it, without accents: ``gram`` in *a gram and a half*."""
    nothing: bool = False
    """Whether it is zero without being called a number: *nothing*, *no sodium*."""
    measure: Measure | None = None
    """What there is none of, where it says so: sodium in *no sodium*."""
