"""Whether a claim holds for two numbers."""

from __future__ import annotations

from fractions import Fraction
from typing import assert_never

from generator.check.claims.claim import Claim, within
from generator.check.claims.pairs import Pair
from generator.language.form import Form, Leeway


def holds(claim: Claim, pair: Pair) -> bool:
    """Whether a pair makes a claim true; either way round where the sentence does not say which."""
    return _holds(claim, pair) or (not pair.directed and _holds(claim, pair.turned))


def _holds(claim: Claim, pair: Pair) -> bool:
    first, second = Fraction(pair.first), Fraction(pair.second)
    match claim.form:
        case Form.TIMES | Form.SHARE:
            return second > 0 and within(claim.leeway, claim.number, first / second)
        case Form.SAME:
            return _alike(claim.leeway, first, second)
        case Form.GAP:
            gap = (first - second) * (1 if claim.number > 0 else -1)
            said = abs(claim.number)
            return gap == said if claim.leeway is Leeway.PLAIN else within(claim.leeway, said, gap)
        case Form.MORE:
            return first > second
        case Form.LESS:
            return first < second
        case Form.MOST:
            return pair.first >= max(pair.others, default=pair.second)
        case Form.LEAST:
            return pair.first <= min(pair.others, default=pair.second)
        case _:
            assert_never(claim.form)


def _alike(leeway: Leeway, first: Fraction, second: Fraction) -> bool:
    """Shown values that are equal; with *about* or *almost*, the smaller at least 90 % of the larger."""
    if leeway in {Leeway.ABOUT, Leeway.ALMOST}:
        return min(first, second) >= Fraction(9, 10) * max(first, second)
    return first == second
