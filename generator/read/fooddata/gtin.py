"""The numbers foods are called by: FDC ids, food codes, and the GTIN below a barcode."""

from __future__ import annotations

import re

_DIGITS = re.compile(r"\d{1,14}", re.ASCII)
_LENGTHS = (8, 12, 13, 14)
"""Of a GTIN as it is printed: GS1 General Specifications, from memory."""


def is_number(typed: str) -> bool:
    """Whether somebody typed a number a food can be called by, spaces or hyphens in it or not."""
    return _DIGITS.fullmatch(_closed(typed)) is not None


def code(typed: str) -> str:
    """The number without the zeros that only fill it up; nothing where it is none.

    A package's twelve digits are the thirteen or fourteen of a list with zeros in front.
    """
    digits = _closed(typed)
    return digits.lstrip("0") if _DIGITS.fullmatch(digits) else ""


def misread(typed: str) -> bool:
    """Whether it is as long as a GTIN, and its last digit does not fit the others.

    Source: GS1 General Specifications, check digit by weights of 3 and 1 from the right; from memory.
    """
    digits = _closed(typed)
    if not is_number(typed) or len(digits) not in _LENGTHS:
        return False
    weighed = (int(one) * (3 if at % 2 else 1) for at, one in enumerate(reversed(digits)))
    return sum(weighed) % 10 != 0


def _closed(typed: str) -> str:
    return typed if typed.isdigit() else "".join(typed.split()).replace("-", "")
