"""Gives tests records of publications: a lesson's states are written in a few words each."""

from __future__ import annotations

from decimal import Decimal

from generator.model.figure import FigureKind
from generator.model.published import LessonState, Publication, Published, PublishedNumber

DAYS = tuple(f"2026-03-{day:02}T17:03:00Z" for day in range(1, 29))
"""A moment of each day."""
STAMPS = {"worksheet": "K7Q2FM", "answers": "3FJ8AB"}


def number(
    value: str, of: str = "Chicken broth, 1 cup", kind: str = "holds", unit: str = "mg"
) -> PublishedNumber:
    """A number of the record."""
    return PublishedNumber(Decimal(value), unit, FigureKind(kind), of)


def state(at: str, language: str = "en", **told: object) -> LessonState:
    """A lesson of one row as it was published; what is named is otherwise."""
    usual: dict[str, object] = {
        "title": "Soup night",
        "numbers": {
            "soups.broth": number("910"),
            "soups.total.gap": number("320", "all rows", "gap"),
        },
        "stamps": STAMPS,
        "stops": {"soups": "Two soups"},
        "times": {"soups": "1:10"},
        "pages": ("index.html", "cards.html"),
        "texts": "9ab2",
    }
    return LessonState(at, language, **(usual | told))  # type: ignore[arg-type]  # each by its name


def gone(at: str, language: str = "en") -> LessonState:
    """A lesson that goes out no more."""
    return LessonState(at, language, gone=True)


def publication(at: str, **told: object) -> Publication:
    """One time the site went out; what is named is otherwise."""
    usual: dict[str, object] = {
        "program": "0.3.0",
        "address": "https://kitchen.example.org/",
        "languages": ("en", "es"),
        "lessons": ("soup",),
        "pages": ("teachers.html",),
    }
    return Publication(at, **(usual | told))  # type: ignore[arg-type]  # each by its name


def record(*publications: Publication, **lessons: tuple[LessonState, ...]) -> Published:
    """A record; ``_`` in the name of a lesson stands for a hyphen."""
    return Published(
        {name.replace("_", "-"): states for name, states in lessons.items()}, publications
    )
