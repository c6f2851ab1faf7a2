"""One answer that counts: what it is of, where it is asked, and what is right."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class AnswerKind(StrEnum):
    """What is asked."""

    GAP = "gap"
    """What lies between two numbers."""
    COUNT = "count"
    """How many times a move is done."""
    QUESTION = "answer"
    """One of some choices, or a number that the lesson computes."""
    LEAN = "lean"
    """Which way a day leans, and by how much."""


@dataclass(frozen=True, slots=True)
class CountedAnswer:
    """An answer that the lesson page can check."""

    id: str
    """Its name in the lesson, as in the ledger where it is a number: ``lunch.apple-raw_pear-raw.gap``."""
    stop: str
    """Id of the stop that asks; ``parting`` for the parting question."""
    kind: AnswerKind
    value: str
    """What is right, the same in every language; another value is another question."""
    row: str = ""
    """Id of its row, ``total`` for all rows together; empty for the whole stop."""
