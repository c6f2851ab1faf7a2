"""Crockford's base 32: a number as symbols that people read aloud and copy, with a check symbol.

Source: Douglas Crockford, "Base 32 Encoding"; symbols, what is read as what, and the five check
symbols are from memory. The check symbol is the number modulo 37. 37 is prime, so it notices any
one wrong symbol, and any two neighbors that changed places.
"""

from __future__ import annotations

from enum import StrEnum

SYMBOLS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
"""By value; I, L, O and U are left out, for they are read as others."""
CHECKS = f"{SYMBOLS}*~$=U"
"""By the number modulo 37."""
GROUP = 4
"""Symbols between two hyphens."""
_READ_AS = {"I": "1", "L": "1", "O": "0"}
_HYPHENS = "-\N{HYPHEN}\N{NON-BREAKING HYPHEN}\N{EN DASH}\N{EM DASH}\N{MINUS SIGN}"
"""A hyphen, and what programs make of one."""


class Misread(StrEnum):
    """Why a code is no number."""

    NO_SYMBOL = "no_symbol"
    """Something stands there that is no symbol."""
    WRONG_CHECK = "wrong_check"
    """The check symbol is that of another number."""


def encode(number: int, length: int) -> str:
    """A number as symbols with its check symbol behind, in groups: ``0000-0016-5PU``.

    Args:
        number: not negative.
        length: how many symbols there are without the check symbol; zeros fill it from the left.

    Raises:
        ValueError: the number is negative or does not fit.
    """
    written = symbols(number, length) + CHECKS[number % len(CHECKS)]
    return "-".join(written[at : at + GROUP] for at in range(0, len(written), GROUP))


def symbols(number: int, length: int) -> str:
    """A number as so many symbols, without a check symbol and in one group.

    Raises:
        ValueError: the number is negative or does not fit.
    """
    if not 0 <= number < len(SYMBOLS) ** length:
        raise ValueError(f"{number} does not fit {length} symbols")
    written = ""
    for _ in range(length):
        number, value = divmod(number, len(SYMBOLS))
        written = SYMBOLS[value] + written
    return written


def decode(text: str) -> tuple[int, int] | Misread:
    """The number of a code and how many symbols it has without the check symbol.

    Case does not matter, O is 0, I and L are 1, and hyphens may stand anywhere.
    """
    plain = "".join(_READ_AS.get(one, one) for one in text.upper() if one not in _HYPHENS)
    read, check = plain[:-1], plain[-1:]
    if not read or check not in CHECKS or not set(read) <= set(SYMBOLS):
        return Misread.NO_SYMBOL
    number = 0
    for one in read:
        number = number * len(SYMBOLS) + SYMBOLS.index(one)
    right = CHECKS.index(check) == number % len(CHECKS)
    return (number, len(read)) if right else Misread.WRONG_CHECK
