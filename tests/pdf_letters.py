"""How large the letters of a PDF are, read by a library that did not make it."""

from __future__ import annotations

from collections.abc import Iterator
from math import sqrt
from pathlib import Path
from typing import Any

from pypdf import PdfReader


def smallest(file: Path) -> tuple[float, str]:
    """The size of the smallest letters, in points of 1/72 inch, and words that have it."""
    return min(_sized(file), key=lambda found: found[0])


def _sized(file: Path) -> Iterator[tuple[float, str]]:
    found: list[tuple[float, str]] = []

    def note(text: str, space: list[float], matrix: list[float], _: Any, size: float) -> None:
        if text.strip():
            found.append((round(size * _scale(space) * _scale(matrix), 2), text.strip()))

    for page in PdfReader(file).pages:
        page.extract_text(visitor_text=note)
    yield from found


def _scale(matrix: list[float]) -> float:
    """By how much a matrix (ISO 32000-1, 8.3.3, from memory) makes things larger, turned or not."""
    a, b, c, d = matrix[:4]
    return sqrt(abs(a * d - b * c))
