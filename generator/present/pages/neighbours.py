"""The lessons before and after one: the only things that its pages say of other lessons."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Neighbour:
    """Another lesson of the site, in the language of the page."""

    id: str
    """Its folder."""
    title: str
    arithmetic: str
    """What a child must be able to do for it; empty where it does not say so."""


@dataclass(frozen=True, slots=True)
class Neighbours:
    """Both sides of a lesson; nothing at the end of the line."""

    before: Neighbour | None = None
    after: Neighbour | None = None


ALONE = Neighbours()
"""Of a lesson that is looked at by itself."""
