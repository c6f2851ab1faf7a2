"""Who reads or hears a text, marked on the field of the model that holds it.

A field of words has one of the types below; what is asked of the words of a lesson, from translation
to reading level, follows from it. A field of plain ``str`` says nothing and is refused by
``present/stops/missing_parts.py``.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from functools import cache
from typing import Annotated, NamedTuple, get_args

from pydantic import StringConstraints

from generator.model.base import Frozen


class For(Enum):
    """Who a text is for."""

    LEARNER_READS = "the learner reads it"
    LEARNER_HEARS = "the learner hears it in the video"
    TEACHER = "an adult reads it, in notes and sources"
    NOBODY = "it is a code or a name of a file, and no words"


LONGEST_TEXT, LONGEST_SCRIPT = 2_000, 8_000
"""Signs of a text on a page, a page of a book or so, and of what is read aloud at one stop, ten minutes."""


@dataclass(frozen=True, slots=True)
class TextMark:
    """What there is to know of the words of a field."""

    whom: For
    """Who reads or hears them."""
    in_sentences: bool = True
    """Whether it is prose, and not a heading or a name."""
    by_words: bool = False
    """Whether a translation names it by its own words, once for the whole lesson."""
    translated: bool = True
    """Whether a translation brings it."""
    longest: int = LONGEST_TEXT
    """Signs it has at most, in any language."""

    @property
    def tells(self) -> bool:
        """Whether it may tell of the lesson's numbers, and name one in braces; no name of a food, no source."""
        return self.translated and not self.by_words


_WORDS = StringConstraints(strip_whitespace=True, min_length=1, max_length=LONGEST_TEXT)
_SPOKEN = StringConstraints(strip_whitespace=True, min_length=1, max_length=LONGEST_SCRIPT)

Text = Annotated[str, _WORDS, TextMark(For.LEARNER_READS)]
"""Sentences an educator wrote for the learner; never markup of the page."""
Heading = Annotated[str, _WORDS, TextMark(For.LEARNER_READS, in_sentences=False)]
"""A title, or the name of a side."""
Script = Annotated[str, _SPOKEN, TextMark(For.LEARNER_HEARS, longest=LONGEST_SCRIPT)]
"""What is read aloud in the video."""
OwnName = Annotated[str, _WORDS, TextMark(For.LEARNER_READS, in_sentences=False, by_words=True)]
"""The educator's own name for a food or a meal."""
TeacherText = Annotated[str, _WORDS, TextMark(For.TEACHER)]
"""Sentences for the teaching notes."""
Source = Annotated[str, _WORDS, TextMark(For.TEACHER, in_sentences=False, by_words=True)]
"""Where a value was read."""
AsWritten = Annotated[
    str, _WORDS, TextMark(For.LEARNER_READS, in_sentences=False, translated=False)
]
"""Words that are the same in every language, or that the library has in each: a person, an amount."""
Code = Annotated[str, TextMark(For.NOBODY)]
"""An id, a date, a file: no words."""


class MarkedField(NamedTuple):
    """A field that may hold words."""

    name: str
    """As the model has it."""
    key: str
    """As it is written in a file."""
    mark: TextMark | None
    """Nothing where the words are in what it holds."""


@cache
def marked_fields(model: type[Frozen]) -> tuple[MarkedField, ...]:
    """The fields of a model that hold words, or other models that may."""
    return tuple(_marked(model))


@cache
def unmarked_fields(model: type[Frozen]) -> tuple[str, ...]:
    """Fields of plain ``str`` in a model and in what it holds, which do not say whom they are for."""
    own = [
        name
        for name, field in model.model_fields.items()
        if _mark((field.annotation, *field.metadata)) is None and str in _parts(field.annotation)
    ]
    held = [
        part
        for field in model.model_fields.values()
        for part in _parts(field.annotation)
        if isinstance(part, type) and issubclass(part, Frozen)
    ]
    return (*own, *(f"{part.__name__}.{name}" for part in held for name in unmarked_fields(part)))


def _marked(model: type[Frozen]) -> Iterator[MarkedField]:
    for name, field in model.model_fields.items():
        mark = _mark((field.annotation, *field.metadata))
        holds_models = any(
            isinstance(part, type) and issubclass(part, Frozen) for part in _parts(field.annotation)
        )
        if holds_models or (mark and mark.whom is not For.NOBODY):
            yield MarkedField(name, field.alias or name, mark)


def _mark(annotations: tuple[object, ...]) -> TextMark | None:
    """The mark anywhere inside a type: ``tuple[Text, ...]``, ``Text | None``."""
    for annotation in annotations:
        if isinstance(annotation, TextMark):
            return annotation
        if found := _mark(get_args(annotation)):
            return found
    return None


def _parts(annotation: object) -> Iterator[object]:
    yield annotation
    for inner in get_args(annotation):
        yield from _parts(inner)
