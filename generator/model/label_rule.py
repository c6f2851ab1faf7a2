"""A rounding rule of the United States food label as data: 21 CFR 101.9(c)."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Step:
    """How finely values are shown, up to a limit."""

    size: Decimal
    """Shown values are multiples of it, in the unit of the rule."""
    until: Fraction | None = None
    """The limit; none where the step serves all that is left."""
    limit_is_in: bool = True
    """Whether the limit itself is still shown by this step."""

    def serves(self, exact: Fraction) -> bool:
        """Whether a value lies below the limit of this step."""
        if self.until is None:
            return True
        return exact <= self.until if self.limit_is_in else exact < self.until


@dataclass(frozen=True, slots=True)
class LabelRule:
    """How the amount of one measure is shown."""

    paragraph: str
    """Of 21 CFR 101.9, such as ``(c)(4)``, and of what else says it."""
    steps: tuple[Step, ...]
    """The finest first; the first one that serves a value is taken, and the last serves every one."""
    zero_below: Fraction = Fraction(0)
    """A smaller value is shown as 0."""
