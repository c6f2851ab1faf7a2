"""One sentence of the page of updates, safe to stand in a page and in XML."""

from __future__ import annotations

import re
from dataclasses import dataclass

_NEVER = re.compile("[\x00-\x1f\x7f-\x9f\ud800-\udfff\ufffe\uffff]+")
"""What neither HTML nor XML may hold (HTML Standard, 13.1.4; XML 1.0, section 2.2), and line ends."""


@dataclass(frozen=True, slots=True)
class Line:
    """A sentence."""

    text: str
    with_numbers: bool = False
    """Whether it holds a value of food; Blocks only leaves it out."""


def one_line(text: str) -> str:
    """A text of the record on one line, without signs that no page can hold."""
    return " ".join(_NEVER.sub(" ", text).split(" ")).strip()
