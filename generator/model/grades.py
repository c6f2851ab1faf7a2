"""School grades a lesson is for, and the age bands that caps and energy values are kept by."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from pydantic import BeforeValidator, WithJsonSchema

_GRADES = re.compile(r"(K|[0-9])(?:-([0-9]))?")


class GradeBand(StrEnum):
    """A band of United States school grades."""

    K_2 = "K-2"
    """About 5 to 8 years."""
    G3_5 = "3-5"
    """About 8 to 11 years."""
    G6_8 = "6-8"
    """About 11 to 14 years."""


@dataclass(frozen=True, slots=True)
class Grades:
    """From one grade to another, both meant; kindergarten is 0."""

    first: int
    """The lowest, from 0."""
    last: int
    """The highest, not below ``first``."""

    @property
    def band(self) -> GradeBand:
        """The band of the youngest child meant: caps are taken from it."""
        if self.first <= 2:
            return GradeBand.K_2
        return GradeBand.G3_5 if self.first <= 5 else GradeBand.G6_8

    def __str__(self) -> str:
        first = "K" if self.first == 0 else str(self.first)
        return first if self.first == self.last else f"{first}-{self.last}"


def parse_grades(text: object) -> Grades:
    """Read ``3-5``, ``K-2`` or ``4``.

    Raises:
        ValueError: the text is none of these forms, or the grades run backwards.
    """
    found = _GRADES.fullmatch(str(text))
    if not found:
        raise ValueError(
            "is not a grade or a span of grades: write K-2, 3-5 or 4, with a plain hyphen"
        )
    first = 0 if found[1] == "K" else int(found[1])
    last = int(found[2]) if found[2] else first
    if last < first or last > 8:
        raise ValueError(
            "must run from a lower to a higher grade, no higher than 8: write K-2, 3-5 or 4"
        )
    return Grades(first, last)


GradeSpan = Annotated[
    Grades,
    BeforeValidator(parse_grades),
    WithJsonSchema({"type": ["string", "integer"], "pattern": f"^{_GRADES.pattern}$"}),
]
