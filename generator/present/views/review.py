"""The sheet with all that somebody reads of a lesson who knows."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.present.views.reviewed import ReviewedView


@dataclass(frozen=True, slots=True)
class ReadNumberView:
    """A number to read."""

    value: str
    name: str
    """What it is, and what it is of."""
    source: str
    """Where it comes from: record, portion, rule, equation."""
    new: bool
    """Whether it is not as it was at the last reading."""


@dataclass(frozen=True, slots=True)
class ReadTextView:
    """A text to read."""

    text: Markup
    """Its claims and numbers in bold."""
    heard: bool
    """Whether it is said in the film."""
    right: bool
    """Whether it is the right one of some answers."""
    new: bool


@dataclass(frozen=True, slots=True)
class ReadPartView:
    """What is read together: of one stop, or of the whole lesson."""

    heading: str
    texts: tuple[ReadTextView, ...]
    numbers: tuple[ReadNumberView, ...]


@dataclass(frozen=True, slots=True)
class ReviewSheetView:
    """The whole sheet."""

    title: str
    meta: str
    read: str
    """In which language it is read."""
    last: tuple[ReviewedView, ...]
    """The last reading with what changed since; nothing where nobody has read it."""
    records: str
    """The release of the food records, where there is one of all; else each source says its own."""
    parts: tuple[ReadPartView, ...]
    captions: tuple[str, ...]
    """Sentences with a claim or a number that the captions alone have."""
    care: tuple[ReadTextView, ...]
    """Every line of care that the pages show, those of the moves among them."""
