"""Numbers in Spanish words: *mil doscientos treinta y cuatro*."""

from __future__ import annotations

from decimal import Decimal

_UP_TO_29 = (
    "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince"
    " dieciséis diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro"
    " veinticinco veintiséis veintisiete veintiocho veintinueve"
)
_FROM_30 = "treinta cuarenta cincuenta sesenta setenta ochenta noventa"
_HUNDREDS = (
    "ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos"
    " novecientos"
)
_SMALL = dict(enumerate(_UP_TO_29.split()))
_TENS = dict(enumerate(_FROM_30.split(), 3))
_OF_HUNDREDS = dict(enumerate(_HUNDREDS.split(), 1))
_SHORT = {"veintiuno": "veintiún", "uno": "un"}
"""What *uno* becomes before *mil*."""


def spelled(number: Decimal) -> str:
    """A number from 0 up to a million, in the form in which one counts."""
    whole, _, part = f"{number:f}".partition(".")
    after = " ".join(_whole(int(digit)) for digit in part.rstrip("0"))
    return f"{_whole(int(whole))} punto {after}" if after else _whole(int(whole))


def _whole(number: int) -> str:
    thousands, rest = divmod(number, 1000)
    if not thousands:
        return _below_1000(rest)
    *head, last = _below_1000(thousands).split(" ")
    before = [] if thousands == 1 else [*head, _SHORT.get(last, last)]
    return " ".join([*before, "mil", *([_below_1000(rest)] if rest else [])])


def _below_1000(number: int) -> str:
    hundreds, rest = divmod(number, 100)
    if number == 100:
        return "cien"
    parts = [_OF_HUNDREDS[hundreds]] if hundreds else []
    return " ".join([*parts, _below_100(rest)] if rest or not parts else parts)


def _below_100(number: int) -> str:
    if number < 30:
        return _SMALL[number]
    tens, ones = divmod(number, 10)
    return f"{_TENS[tens]} y {_SMALL[ones]}" if ones else _TENS[tens]
