"""The lines of the record of publications, as they stand in its files."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from functools import cache
from typing import Annotated, TypeVar

from pydantic import ConfigDict, Field, StringConstraints, TypeAdapter
from pydantic.dataclasses import dataclass

from generator.model.figure import FigureKind
from generator.model.published import LessonState, Publication, PublishedNumber

_At = Annotated[str, StringConstraints(pattern=r"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$")]
_CLOSED = ConfigDict(extra="forbid")
L = TypeVar("L")


@dataclass(frozen=True, config=_CLOSED)
class NumberLine:
    """A number in a line of numbers."""

    value: Decimal
    """As it was shown, in ``unit``."""
    unit: str
    """As the ledger has it."""
    kind: FigureKind
    """What it is."""
    of: str
    """What it is of, in the language of its line."""


@dataclass(frozen=True, config=_CLOSED)
class NumbersLine:
    """A set of numbers, which many states may have."""

    numbers: Annotated[str, Field(min_length=1)]
    """What states call it."""
    language: str
    """Tag of the language that ``of`` is said in."""
    are: Mapping[str, NumberLine]
    """By their ids in the ledger."""


@dataclass(frozen=True, config=_CLOSED)
class StateLine:
    """What a lesson said, its numbers by name; or that it went out no more. As ``LessonState``."""

    at: _At
    """When."""
    language: str
    """Tag."""
    title: str = ""
    """Of the lesson."""
    numbers: str = ""
    """What its set of numbers is called, in a line of the same file."""
    stamps: Mapping[str, str] = Field(default_factory=dict)
    """By sheet."""
    stops: Mapping[str, str] = Field(default_factory=dict)
    """Headings by id."""
    formerly: Mapping[str, str] = Field(default_factory=dict)
    """Ids of stops by those they had before."""
    times: Mapping[str, str] = Field(default_factory=dict)
    """By stop."""
    pages: tuple[str, ...] = ()
    """Names of its files."""
    texts: str = ""
    """A mark of them all."""
    gone: bool = False
    """Whether it went out no more."""

    def with_numbers(self, numbers: Mapping[str, NumberLine]) -> LessonState:
        """The state with what its numbers are."""
        return LessonState(
            at=self.at,
            language=self.language,
            title=self.title,
            numbers={
                id_: PublishedNumber(one.value, one.unit, one.kind, one.of)
                for id_, one in numbers.items()
            },
            stamps=self.stamps,
            stops=self.stops,
            formerly=self.formerly,
            times=self.times,
            pages=self.pages,
            texts=self.texts,
            gone=self.gone,
        )


@dataclass(frozen=True, config=_CLOSED)
class PublicationLine:
    """One publication, as ``Publication``."""

    at: _At
    """When."""
    program: str
    """Its version."""
    address: str
    """Of the site."""
    languages: tuple[str, ...]
    """Tags."""
    lessons: tuple[str, ...]
    """Ids."""
    pages: tuple[str, ...] = ()
    """Paths of what is no lesson's."""
    to: str = "git"
    """Where it went."""
    note: str = ""
    """What she said of it."""
    undoes: str = ""
    """Time of the one it takes back."""


def as_numbers(told: dict[str, object]) -> NumbersLine:
    """A line of numbers.

    Raises:
        ValidationError: it is none.
    """
    line: NumbersLine = _adapter(NumbersLine).validate_python(told)
    return line


def as_state(told: dict[str, object]) -> StateLine:
    """A line of a state.

    Raises:
        ValidationError: it is none.
    """
    line: StateLine = _adapter(StateLine).validate_python(told)
    return line


def as_publication(told: dict[str, object]) -> Publication:
    """A line of a publication.

    Raises:
        ValidationError: it is none.
    """
    line = _adapter(PublicationLine).validate_python(told)
    return Publication(
        at=line.at,
        program=line.program,
        address=line.address,
        languages=line.languages,
        lessons=line.lessons,
        pages=line.pages,
        to=line.to,
        note=line.note,
        undoes=line.undoes,
    )


@cache
def _adapter(kind: type[L]) -> TypeAdapter[L]:
    return TypeAdapter(kind)
