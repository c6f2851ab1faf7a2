"""A what-if stop: both sides as they are, and what each change makes of them."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.present.views.amounts import BlocksView, HoldingView, SourceView
from generator.present.views.number import Number
from generator.present.views.stop import Head


@dataclass(frozen=True, slots=True)
class TotalsView:
    """All that both sides hold, and the gap between them."""

    totals: tuple[Number, Number]
    """Each with its unit."""
    blocks: tuple[BlocksView, BlocksView]
    """Of each side."""
    gap: Number
    """With its unit."""
    left: BlocksView
    """The gap in blocks, its hundreds taken apart into tens."""
    left_key: str
    """``first`` or ``second``: whose blocks are left."""
    working: str
    """``45 − 43 = 2``"""
    says: str
    """Which side holds more, and by how much."""


@dataclass(frozen=True, slots=True)
class ChangeView:
    """One change, and what it makes of both sides."""

    id: str
    """Its name in the ledger."""
    side: str
    """Name of the side that is changed."""
    side_key: str
    """``first`` or ``second``"""
    label: str
    """``Barley (1 cup) in place of white rice (1 cup)``, or what the educator calls it."""
    named: bool
    """Whether that is the educator's own name for it, which may not tell the foods."""
    becomes: str
    """``1 g becomes 6 g``: the numbers of the food, before and after."""
    new: tuple[HoldingView, ...]
    """What stands there instead; nothing where the food is left out."""
    way: str
    """Value of the way the gap goes."""
    after: TotalsView
    says: str
    """How the gap went, in one or two sentences."""


@dataclass(frozen=True, slots=True)
class WhatIfView:
    """Changes to choose from, a guess, and what comes of it."""

    head: Head
    prompt: Markup
    sides: tuple[str, str]
    asked_in: str
    """Id of the comparison that is changed."""
    for_stop: str
    """Its heading."""
    totals_asked: bool
    """Whether the learner found the totals there; then paper leaves them to be written."""
    before: TotalsView
    changes: tuple[ChangeView, ...]
    ways: tuple[tuple[str, str, str], ...]
    """Value, sentence and word of each way the gap may go."""
    closest: str
    """Which change brings the sides closest, in a sentence."""
    closest_gap: str
    """What the gap is then; empty where none does."""
    even: str
    """Which one makes them even."""
    reveal: Markup
    sources: tuple[SourceView, ...]
    """Of the numbers that its comparison does not tell of already."""
