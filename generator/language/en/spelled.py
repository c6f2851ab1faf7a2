"""Numbers in English words, as a class says them: *one thousand two hundred thirty-four*."""

from __future__ import annotations

from decimal import Decimal

_UP_TO_19 = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
    " fifteen sixteen seventeen eighteen nineteen"
)
_FROM_20 = "twenty thirty forty fifty sixty seventy eighty ninety"

_SMALL = dict(enumerate(_UP_TO_19.split()))
_TENS = dict(enumerate(_FROM_20.split(), 2))


def spelled(number: Decimal) -> str:
    """A number from 0 up to a million; *and* is not said."""
    whole, _, part = f"{number:f}".partition(".")
    after = " ".join(_whole(int(digit)) for digit in part.rstrip("0"))
    return f"{_whole(int(whole))} point {after}" if after else _whole(int(whole))


def _whole(number: int) -> str:
    thousands, rest = divmod(number, 1000)
    parts = [f"{_whole(thousands)} thousand"] if thousands else []
    hundreds, rest = divmod(rest, 100)
    parts += [f"{_SMALL[hundreds]} hundred"] if hundreds else []
    return " ".join([*parts, _below_100(rest)] if rest or not parts else parts)


def _below_100(number: int) -> str:
    if number < 20:
        return _SMALL[number]
    tens, ones = divmod(number, 10)
    return f"{_TENS[tens]}-{_SMALL[ones]}" if ones else _TENS[tens]
