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
    """The household unit in the singular, or ``g`` for grams."""

    @property
    def grams(self) -> Fraction | None:
        """Grams, where the amount was given in grams; else nothing."""
        return self.number if self.unit in {"g", "gram"} else None


def parse_amount(text: str) -> Amount | None:
    """Read ``1 medium``, ``1 1/2 cup chopped``, ``0.5 cup`` or ``150 g``; nothing if it is none of them."""
    found = _AMOUNT.fullmatch(text.strip())
    if not found:
        return None
    if found["bottom"]:
        if int(found["bottom"]) == 0:
            return None
        number = int(found["whole"] or 0) + Fraction(int(found["top"]), int(found["bottom"]))
        return Amount(number, _singular(found["a"]))
    return Amount(Fraction(Decimal(found["number"])), _singular(found["b"]))


def _singular(unit: str) -> str:
    """``slices`` and ``cups chopped`` as ``slice`` and ``cup chopped``, so that both spellings find a portion."""
    first, *rest = unit.lower().split()
    if len(first) > 3 and first.endswith("s") and not first.endswith("ss"):
        first = first[:-1]
    return " ".join([first, *rest])
