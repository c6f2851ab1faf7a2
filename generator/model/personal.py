"""What a file tells of people besides what it shows."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from generator.model.places import Path


class Personal(StrEnum):
    """What is taken out of a file before it is published, and told."""

    PLACE = "where it was made"
    NAME = "somebody's name"


@dataclass(frozen=True, slots=True)
class LeftOut:
    """What is taken out of one file that a lesson names."""

    path: Path
    """Where the lesson names it."""
    name: str
    """Of the file."""
    told: frozenset[Personal]
    """What was in it."""


def said(told: frozenset[Personal]) -> str:
    """In words: ``where it was made and somebody's name``."""
    return " and ".join(one for one in Personal if one in told)
