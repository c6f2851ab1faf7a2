"""A moment in a video: ``"1:10"`` in a lesson file, seconds in here."""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Annotated

from pydantic import BeforeValidator, Field

_TIME = re.compile(r"(?:([0-9]{1,2}):)?([0-5]?[0-9]):([0-5][0-9](?:\.[0-9]{1,3})?)")

_NEARLY = re.compile(r"(?<![0-9])([0-9]{1,2})[^0-9-]{1,2}([0-5][0-9])(?![0-9])")
"""What is written for a time where it is none: ``1.30``, ``1m20s``, or curly quotes around it."""


def parse_moment(text: object) -> Decimal:
    """Seconds of ``m:ss``, ``m:ss.ttt`` or ``h:mm:ss``.

    Raises:
        ValueError: the text is none of these forms.
    """
    found = _TIME.fullmatch(text) if isinstance(text, str) else None
    if not found:
        near = _NEARLY.search(str(text))
        meant = f"{near[1]}:{near[2]}" if near else "1:10"
        raise ValueError(
            f'is not a time: write minutes and seconds in straight quotes, such as "{meant}"'
        )
    hours, minutes, seconds = found.groups()
    return Decimal(hours or 0) * 3600 + Decimal(minutes) * 60 + Decimal(seconds)


def clock(seconds: Decimal) -> str:
    """``1:10`` from 70 seconds; parts of a second are dropped."""
    whole = int(seconds)
    hours, rest = divmod(whole, 3600)
    head = f"{hours}:{rest // 60:02}" if hours else f"{rest // 60}"
    return f"{head}:{rest % 60:02}"


Moment = Annotated[
    Decimal,
    BeforeValidator(parse_moment),
    Field(ge=0, json_schema_extra={"type": "string", "pattern": f"^{_TIME.pattern}$"}),
]
"""Seconds from the start of the video."""
