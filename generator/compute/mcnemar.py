"""McNemar's test: whether more changed their answer one way than the other way, exact and as mid-p.

Exact (conditional) and mid-p as in Fagerland, Lydersen, Laake 2013, BMC Medical Research Methodology
13:91 (R, abstract; formulas R at the source of the CRAN package contingencytables); they recommend
mid-p. All of it in whole numbers and fractions: nothing is lost.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

FEWEST = 6
"""Who changed their answer, below which nothing is tested: with 5 the exact p cannot come below
2 / 2⁵ = 0.0625."""


@dataclass(frozen=True, slots=True)
class Chance:
    """How often chance alone would make a difference as large, both ways taken together; 0 to 1."""

    exact: Fraction
    """By the exact test, conditional on who changed."""
    mid_p: Fraction
    """The same with half the weight of the table that was seen."""


def mcnemar(worse: int, better: int) -> Chance:
    """The test of pairs that were answered twice.

    Args:
        worse: how many went from right to wrong.
        better: how many went from wrong to right.
    """
    changed, fewer = worse + better, min(worse, better)
    if not changed:
        return Chance(Fraction(1), Fraction(1))
    term = below = 1
    for one in range(fewer):
        term = term * (changed - one) // (one + 1)
        below += term
    ways = 2**changed
    exact = min(Fraction(1), Fraction(2 * below, ways))
    return Chance(exact, min(Fraction(1), Fraction(2 * below - term, ways)))
