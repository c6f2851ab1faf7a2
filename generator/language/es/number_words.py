"""Spanish number words below a million, by the grammar of the *Ortografía* (RAE and ASALE 2010; from memory).

Own code, because a caption's problem needs the place of each number, which the library text2num
does not give, and because it has no file for Intel Macs; the tests hold us against num2words.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from generator.language.es.parts import NOTHING, PARTS
from generator.language.number_words import NumberWords, Read, sign_of

_UP_TO_29 = (
    "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince"
    " dieciseis diecisiete dieciocho diecinueve veinte veintiuno veintidos veintitres"
    " veinticuatro veinticinco veintiseis veintisiete veintiocho veintinueve"
)
_FROM_30 = "treinta cuarenta cincuenta sesenta setenta ochenta noventa"
_FROM_200 = "doscient trescient cuatrocient quinient seiscient setecient ochocient novecient"
_OFTEN = (("cincocient", 500), ("sietecient", 700), ("nuevecient", 900))
"""Often written and said in place of *quinient*, *setecient*, *novecient*."""
_UNITS = {word: value for value, word in enumerate(_UP_TO_29.split())}
_UNITS |= {"un": 1, "una": 1, "veintiun": 21, "veintiuna": 21}
_TENS = {word: 10 * value for value, word in enumerate(_FROM_30.split(), 3)}
_UNITS |= {
    f"{ten}i{one}": tens + value
    for ten, tens in _TENS.items()
    for one, value in _UNITS.items()
    if 0 < value < 10
}
"""*Noventaicinco*, which is written too."""
_HUNDREDS = {"cien": 100, "ciento": 100}
_HUNDREDS |= {f"{root}os": 100 * value for value, root in enumerate(_FROM_200.split(), 2)}
_HUNDREDS |= {f"{root}as": 100 * value for value, root in enumerate(_FROM_200.split(), 2)}
_HUNDREDS |= {f"{root}{end}": value for root, value in _OFTEN for end in ("os", "as")}
_BEGIN = frozenset(
    {
        *_UNITS,
        *_TENS,
        *_HUNDREDS,
        "mil",
        "medio",
        "media",
        "cuarto",
        "par",
        "docena",
        "punto",
        "coma",
    }
)
"""Words a number can begin with."""


def _read(tokens: Sequence[str], at: int) -> Read | None:
    """The longest number that begins at a token; tokens have no accents."""
    first = _below_1000(tokens, at)
    if first is None:
        if _word(tokens, at) != "mil":
            return None
        value, used = 1000, 1
    elif 0 < first[0] < 1000 and _is_thousands(tokens, at, first[1]):
        value, used = first[0] * 1000, first[1] + 1
    else:
        return _spoken_short(tokens, at) or first
    rest = _below_1000(tokens, at + used)
    return (value + rest[0], used + rest[1]) if rest and rest[0] else (value, used)


def _is_thousands(tokens: Sequence[str], at: int, used: int) -> bool:
    """*Uno mil* is a one and a thousand."""
    return _word(tokens, at + used) == "mil" and _word(tokens, at + used - 1) not in {"uno", "una"}


def _spoken_short(tokens: Sequence[str], at: int) -> Read | None:
    """*Cuatro veinte*, *uno cero cinco*, and *cuatro cientos* in two words."""
    hundreds = _UNITS.get(_word(tokens, at), 0)
    if not 0 < hundreds < 10:
        return None
    between = _word(tokens, at + 1)
    apart = between in {"cientos", "cientas"}
    rest = _below_100(tokens, at + (2 if apart or between == "cero" else 1))
    if apart:
        return (hundreds * 100 + rest[0], 2 + rest[1]) if rest and rest[0] else (hundreds * 100, 2)
    if between == "cero":
        return (hundreds * 100 + rest[0], 3) if rest and 0 < rest[0] < 10 else None
    if hundreds == 1 or rest is None or rest[0] < 10 or (hundreds, rest[0]) == (9, 10):
        return None
    return (
        None
        if _word(tokens, at + 1 + rest[1]) == "mil"
        else (hundreds * 100 + rest[0], 1 + rest[1])
    )


def _below_1000(tokens: Sequence[str], at: int) -> Read | None:
    word = _word(tokens, at)
    if word not in _HUNDREDS:
        return _below_100(tokens, at)
    rest = None if word == "cien" else _below_100(tokens, at + 1)
    return (_HUNDREDS[word] + rest[0], 1 + rest[1]) if rest and rest[0] else (_HUNDREDS[word], 1)


def _below_100(tokens: Sequence[str], at: int) -> Read | None:
    word = _word(tokens, at)
    if word in _TENS or word in {"diez", "veinte"}:  # *diez y seis* is old, and still heard
        tens = _TENS.get(word) or _UNITS[word]
        one = _UNITS.get(_word(tokens, at + 2), 0) if _word(tokens, at + 1) == "y" else 0
        joined = 0 < one < 10 and (word in _TENS or one > 5)
        return (tens + one, 3) if joined else (tens, 1)
    return (_UNITS[word], 1) if word in _UNITS else None


def _word(tokens: Sequence[str], at: int) -> str:
    return tokens[at] if at < len(tokens) else ""


NUMBER_WORDS = NumberWords(
    read=_read,
    begin=_BEGIN,
    sign=sign_of(*_BEGIN, "no", "sin", "nada", "ninguno", "ninguna"),
    # Both marks are in use: 1.200 in Spain, 1,200 in Mexico and in the United States.
    thousands=re.compile(r"\d{1,3}(?:[.,]\d{3})+"),
    plain=re.compile(r"\d+(?:[.,]\d{1,2})?"),
    spaced=True,
    point=frozenset({"punto", "coma"}),
    no_point=frozenset(
        ["este", "ese", "el", "un", "al", "del", "que", "en", "a", "cada", "primer", "ultimo"]
    ),
    articles=frozenset({"mil", "cien"}),
    holds=frozenset(
        [
            "tiene",
            "tienen",
            "contiene",
            "contienen",
            "lleva",
            "llevan",
            "trae",
            "traen",
            "da",
            "dan",
            "son",
        ]
    ),
    parts=PARTS,
    nothing=NOTHING,
)
