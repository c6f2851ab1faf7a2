"""What a kind of stop with numbers supplies, as one record; nothing has a default, so that mypy names what is left out."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from typing import Generic, TypeVar

from generator.compute.counted import CountedAnswer
from generator.compute.figure import Figure
from generator.compute.result import WorkedStop
from generator.model.ids import StopIds
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.stops.base import BaseStop

S = TypeVar("S", bound=BaseStop)
W = TypeVar("W", bound=WorkedStop)


@dataclass(frozen=True, slots=True)
class Given:
    """All that a stop may take its numbers from, besides itself."""

    lesson: Lesson
    """Whose stop it is."""
    library: Library
    """Foods and moves."""
    counted: Mapping[str, Decimal]
    """How much of a gap stands for one count, by the id of the stop whose gaps are counted."""
    worked: Mapping[str, WorkedStop]
    """The stops that were worked out before, by id."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkedKind(Generic[S, W]):
    """A kind of stop that has numbers of its own."""

    stop: type[S]
    """Its model."""
    after: tuple[str, ...]
    """Kinds that are worked out before it, because it takes numbers from them."""
    work: Callable[[S, StopIds, Given], W]
    """A stop and the names in it, worked out."""
    figures: Callable[[str, W], Iterator[Figure]]
    """Every number of a stop, by the stop's id, for the ledger."""
    counted: Callable[[str, W], Iterator[CountedAnswer]]
    """Its answers that count, by the stop's id, in the order of the lesson page."""

    @property
    def name(self) -> str:
        """The key that begins it in a lesson file."""
        return self.stop.kind_name()


def none_counted(_stop: str, _worked: object) -> Iterator[CountedAnswer]:
    """What a kind without answers that can be checked supplies."""
    return iter(())
