"""English number words from 0 to 99,999, by the grammar every schoolbook has.

Own code, because a caption's problem needs the place of each number, which the library text2num
does not give, and because it has no file for Intel Macs; the tests hold us against num2words.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from generator.language.en.parts import NOTHING, PARTS
from generator.language.number_words import NumberWords, Read, sign_of

_UP_TO_19 = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
    " fifteen sixteen seventeen eighteen nineteen"
)
_FROM_20 = "twenty thirty forty fifty sixty seventy eighty ninety"
_UNITS = {word: value for value, word in enumerate(_UP_TO_19.split())}
_UNITS |= {"ninteen": 19}
_TENS = {word: 10 * value for value, word in enumerate(_FROM_20.split(), 2)}
_TENS |= {"fourty": 40, "ninty": 90}
"""With what is often written in their place."""
_OH = frozenset({"oh", "o", "zero"})
"""*One oh five*: the tens are none."""
_BEGIN = frozenset({*_UNITS, *_TENS, "a", "an", "half", "quarter", "couple", "hundred", "point"})
"""Words a number can begin with."""
_LARGE = frozenset({"hundred", "thousand"})
"""Behind two numbers they belong to the second alone."""


def _read(tokens: Sequence[str], at: int) -> Read | None:
    """The longest number that begins at a token; a comma is a token of its own.

    Reads *one hundred ten*, *one hundred and ten*, *a hundred ten*, *twelve hundred*, *one thousand,
    two hundred* and, as cooks say it, *four ten* for 410. *One ten* stays a one and a ten, for the
    children who count in tens.
    """
    first = _below_1000(tokens, at)
    if _word(tokens, at) == "a" and _word(tokens, at + 1) == "thousand":
        first = (1, 1)
    if first is None:
        return None
    value, used = first
    if _word(tokens, at + used) != "thousand" or not 0 < value < 100:
        return _colloquial(tokens, at) or first
    return _after_thousand(tokens, at, (value * 1000, used + 1))


def _after_thousand(tokens: Sequence[str], at: int, thousands: Read) -> Read:
    value, used = thousands
    joint = _word(tokens, at + used)
    skip = 1 if joint in {",", "and"} else 0
    rest = _below_1000(tokens, at + used + skip)
    if rest is None or not 0 < rest[0] < 1000 or _word(tokens, at + used + skip) == "a":
        return thousands
    if (joint == "," and rest[0] < 100) or (joint == "and" and rest[0] >= 100):
        return thousands
    return value + rest[0], used + skip + rest[1]


def _below_1000(tokens: Sequence[str], at: int) -> Read | None:
    """*Twelve hundred* reaches 9,900 here too."""
    if _word(tokens, at) == "a" and _word(tokens, at + 1) == "hundred":
        first: Read | None = (1, 1)
    else:
        first = _below_100(tokens, at)
    if first is None:
        return None
    value, used = first
    if value == 0 or _word(tokens, at + used) != "hundred":
        return first
    value, used = value * 100, used + 1
    skip = 1 if _word(tokens, at + used) == "and" else 0
    rest = _below_100(tokens, at + used + skip)
    return (value + rest[0], used + skip + rest[1]) if rest and rest[0] else (value, used)


def _below_100(tokens: Sequence[str], at: int) -> Read | None:
    word = _word(tokens, at)
    if word in _UNITS:
        return _UNITS[word], 1
    if word not in _TENS:
        return None
    one = _UNITS.get(_word(tokens, at + 1), 0)
    return (_TENS[word] + one, 2) if 0 < one < 10 else (_TENS[word], 1)


def _colloquial(tokens: Sequence[str], at: int) -> Read | None:
    """*Four ten*, *two eighty*, *twelve fifty*, *one oh five*; *ten eleven* is counting."""
    hundreds = _UNITS.get(_word(tokens, at), 0)
    if not 0 < hundreds < 20:
        return None
    if _word(tokens, at + 1) in _OH:
        one = _UNITS.get(_word(tokens, at + 2), 0)
        return (hundreds * 100 + one, 3) if 0 < one < 10 else None
    rest = _below_100(tokens, at + 1)
    if rest is None or rest[0] < 10 or hundreds == 10 or rest[0] - hundreds in {1, -1}:
        return None
    if (hundreds, rest[0]) == (1, 10) or _word(tokens, at + 1 + rest[1]) in _LARGE:
        return None
    return hundreds * 100 + rest[0], 1 + rest[1]


def _word(tokens: Sequence[str], at: int) -> str:
    return tokens[at] if at < len(tokens) else ""


_ZERO = ("nothing", "none", "without", "free")

NUMBER_WORDS = NumberWords(
    read=_read,
    begin=_BEGIN,
    sign=sign_of(*(_BEGIN - {"a", "an"}), "hundred", "thousand", "dozen", "score", "no", *_ZERO),
    thousands=re.compile(r"\d{1,3}(?:,\d{3})+(?:\.\d{1,2})?"),
    plain=re.compile(r"\d+(?:\.\d{1,2})?"),
    spaced=True,
    point=frozenset({"point"}),
    no_point=frozenset(
        [
            "this",
            "that",
            "what",
            "the",
            "a",
            "at",
            "any",
            "some",
            "each",
            "every",
            "first",
            "last",
            "next",
        ]
    ),
    articles=frozenset({"a"}),
    holds=frozenset(
        ["holds", "hold", "held", "has", "contains", "contain", "brings", "gives", "is"]
    ),
    parts=PARTS,
    nothing=NOTHING,
)
