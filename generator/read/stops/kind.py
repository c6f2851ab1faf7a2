"""What a kind of stop supplies for reading, as one record; nothing has a default, so that mypy names what is left out."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Generic, TypeVar

from generator.model.ids import StopIds
from generator.model.library import Library
from generator.model.places import Path, Places
from generator.model.stops.base import BaseStop
from generator.problems import Place, Problem
from generator.read.raw_stops import RawStop
from generator.read.source import Data

S = TypeVar("S", bound=BaseStop)


@dataclass(frozen=True, slots=True)
class WrittenStop:
    """A stop as it is written, whatever its shape, among all that it may name."""

    data: dict[str, Data]
    """Its keys, those beside the kind included."""
    path: Path
    """Keys and numbers from the top of the lesson file."""
    places: Places
    """Of its lesson file."""
    library: Library
    """Foods and moves it may name."""
    stops: Mapping[int, RawStop]
    """All stops of its lesson, itself included."""

    def place(self, *keys: str | int) -> Place:
        """Where something inside of it stands."""
        return self.places.at(*self.path, *keys)


@dataclass(frozen=True, slots=True)
class MadeStop(Generic[S]):
    """A stop of a right shape, with the names in it."""

    stop: S
    """Of its kind's own model."""
    ids: StopIds
    """Its names and those inside it."""
    path: Path
    """Keys and numbers from the top of the lesson file."""
    places: Places
    """Of its lesson file."""

    def place(self, *keys: str | int) -> Place:
        """Where something inside of it stands."""
        return self.places.at(*self.path, *keys)


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadKind(Generic[S]):
    """A kind of stop that names foods, moves or other stops, or has names of its own inside."""

    stop: type[S]
    """Its model."""
    references: Callable[[WrittenStop], Iterator[Problem]]
    """What it names and nobody finds, looked up before its shape is known to be right."""
    names: Callable[[MadeStop[S]], Iterator[Problem]]
    """Names inside of it that two things have."""

    @property
    def name(self) -> str:
        """The key that begins it in a lesson file."""
        return self.stop.kind_name()


def nothing(_: object) -> Iterator[Problem]:
    """What a kind without references, or without names inside, supplies."""
    return iter(())
