"""How much of a food: a number and a household unit, such as ``1/2 cup`` or ``150 g``."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

_AMOUNT = re.compile(
    r"(?:(?P<whole>[0-9]{1,6})\s+)?(?P<top>[0-9]{1,6})/(?P<bottom>[0-9]{1,6})\s+(?P<a>\S.*)"
    r"|(?P<number>[0-9]{1,6}(?:\.[0-9]{1,6})?)\s*(?P<b>[^\W\d_].*)"
)


@dataclass(frozen=True, slots=True)
class Amount:
    """A number of units, read from the educator's own wording."""

    number: Fraction
    """How many units; kept exact, so that a third of a cup stays a third."""
    unit: str
    """The household unit as written, in small letters, or ``g`` for grams."""
    in_decimals: bool = False
    """Whether its number was written with a decimal point, as packages do."""

    @property
    def grams(self) -> Fraction | None:
        """Grams, where the amount was given in grams; else nothing."""
        return self.number if self.unit in {"g", "gram", "grams"} else None


def parse_amount(text: str) -> Amount | None:
    """Read ``1 medium``, ``1 1/2 cup chopped``, ``0.5 cup`` or ``150 g``; nothing if it is none of them."""
    found = _AMOUNT.fullmatch(text.strip())
    if not found:
        return None
    if found["bottom"]:
        if int(found["bottom"]) == 0:
            return None
        number = int(found["whole"] or 0) + Fraction(int(found["top"]), int(found["bottom"]))
        return Amount(number, _spaced(found["a"]))
    decimal = Decimal(found["number"])
    return Amount(Fraction(decimal), _spaced(found["b"]), in_decimals="." in found["number"])


def same_unit(one: Amount, other: Amount) -> bool:
    """Whether two amounts count the same: ``1 small bag`` and ``2 small bags``, ``1 cup`` and ``3 cups``."""
    words, others = one.unit.split(), other.unit.split()
    return len(words) == len(others) and all(map(_same_word, words, others))


def _same_word(one: str, other: str) -> bool:
    return one == other or one in _singulars(other) or other in _singulars(one)


def _singulars(word: str) -> set[str]:
    """What an English word may be the plural of: ``cookies`` of ``cookie`` or ``cooky``."""
    changed = {"s": "", "es": "", "ies": "y", "ves": "f"}
    return {
        word.removesuffix(end) + back
        for end, back in changed.items()
        if word.endswith(end) and not word.endswith("ss") and len(word) > len(end) + 1
    }


def _spaced(unit: str) -> str:
    return " ".join(unit.lower().split())
