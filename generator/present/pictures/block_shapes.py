"""Which sizes of base-ten blocks a page draws, so that it brings the shapes of those alone."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, is_dataclass

from generator.present.views.amounts import BlocksView

_HALF = 5
"""Tenths that are drawn as one half."""


def block_shapes(*views: object) -> frozenset[str]:
    """Names of the shapes in all piles of some views, wherever in them they stand."""
    return frozenset(shape for pile in _piles(views) for shape in _shapes(pile))


def _piles(view: object) -> Iterator[BlocksView]:
    if isinstance(view, BlocksView):
        yield view
    elif isinstance(view, tuple):
        for one in view:
            yield from _piles(one)
    elif is_dataclass(view):
        for field in fields(view):
            yield from _piles(getattr(view, field.name))


def _shapes(pile: BlocksView) -> Iterator[str]:
    if pile.hundreds:
        yield from ("hundred", "tens")  # in one piece, or taken apart to be counted
    if pile.tens:
        yield "ten"
    if pile.ones:
        yield "one"
    if pile.tenths:
        yield "half" if pile.tenths == _HALF else "tenth"
