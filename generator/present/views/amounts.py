"""Values, blocks and where they come from."""

from __future__ import annotations

from dataclasses import dataclass

from generator.present.views.number import Number


@dataclass(frozen=True, slots=True)
class BlocksView:
    """Base-ten blocks of one number."""

    label: str
    """Said instead of the picture: ``3 hundreds, 2 tens``."""
    hundreds: int
    tens: int
    ones: int
    tenths: int
    """Five of them are drawn as one half."""


@dataclass(frozen=True, slots=True)
class RingsView:
    """Blocks in rings, each of what one count stands for, and what stands outside of them."""

    label: str
    """Said instead of the picture: ``16 groups of 2 tens, and 1 ten outside``."""
    times: int
    each: BlocksView
    """The blocks in one ring."""
    rest: BlocksView
    """What stands outside."""


@dataclass(frozen=True, slots=True)
class HoldingView:
    """One side of a row."""

    side: str
    """Name of the side."""
    side_key: str
    """``first`` or ``second``: which colour and pattern it wears."""
    name: str
    """The food."""
    amount: str
    value: Number
    """Without its unit."""
    unit: str
    blocks: BlocksView
    teaspoons: str
    """For sugars: ``about 9 ¾ teaspoons``; else empty."""
    asked_for: bool
    """A question of the lesson asks which food holds so much: then teaspoons stand in the answer key alone."""
    grams: str
    """Weight of the amount, ``182 g``; empty where it is not known."""


@dataclass(frozen=True, slots=True)
class WorkingView:
    """How a row is worked out, line by line."""

    lines: tuple[str, ...]
    """``410 − 90 = 320``, ``320 ÷ 10 = 32``, in the order they are done."""
    says: str
    """One sentence with the answer."""


@dataclass(frozen=True, slots=True)
class ColumnView:
    """One place-value column of a subtraction on paper."""

    place: str
    """Key of its short head: ``place_hundreds``, ``place_tens`` ... ``place_hundredths``."""
    larger: str
    smaller: str
    gap: str
    """One digit each, or empty."""
    after_point: bool
    """Whether the decimal point stands before it."""


@dataclass(frozen=True, slots=True)
class SourceView:
    """Where the numbers of one food come from."""

    food: str
    says: str
    """Record, portion weight and rounding, in one sentence."""


@dataclass(frozen=True, slots=True)
class BringsView:
    """What one portion brings."""

    portion: str
    """``Apple, 1 medium``."""
    much: str
    """``fiber and iron``, or that it is less than a tenth of each."""
    for_adults: tuple[str, ...]
    """Sentences with the shares, what is low or high, and what the record does not know."""
