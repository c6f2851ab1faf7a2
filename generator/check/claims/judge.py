"""Whether a claim holds for two numbers."""

from __future__ import annotations

from fractions import Fraction
from typing import assert_never

from generator.check.claims.claim import BOUNDS, Claim, within
from generator.check.claims.pair import Pair
from generator.language.form import Form, Leeway


def holds(claim: Claim, pair: Pair) -> bool:
    """Whether a pair makes a claim true; either way round where the sentence does not say which.

    A claim that is negated is true where what it denies is not.
    """
    denied = _holds(claim, pair) or (not pair.directed and _holds(claim, pair.turned))
    return denied is not claim.negated


def _holds(claim: Claim, pair: Pair) -> bool:
    first, second = Fraction(pair.first), Fraction(pair.second)
    match claim.form:
        case Form.TIMES | Form.SHARE:
            return second > 0 and within(_leeway(claim), claim.number, first / second)
        case Form.SAME:
            return _alike(claim.leeway, first, second)
        case Form.GAP:
            gap = (first - second) * (1 if claim.number > 0 else -1)
            said = abs(claim.number)
            return gap == said if claim.leeway is Leeway.PLAIN else within(claim.leeway, said, gap)
        case Form.GAP_SHARE:
            return second > 0 and _part(claim, (first - second) / second)
        case Form.MORE:
            return first > second
        case Form.LESS:
            return first < second
        case Form.MOST:
            return pair.first >= max(pair.others, default=pair.second)
        case Form.LEAST:
            return pair.first <= min(pair.others, default=pair.second)
        case Form.ROWS:
            return pair.first == abs(claim.number)
        case Form.EVERY_ROW:
            return pair.first == pair.second
        case _:
            assert_never(claim.form)


def _leeway(claim: Claim) -> Leeway:
    """A fifth and less are said roughly by themselves: 0.22 is *a fifth*. Ours, no source."""
    rough = claim.leeway is Leeway.PLAIN and claim.number <= Fraction(1, 5)
    return Leeway.ABOUT if rough else claim.leeway


def _part(claim: Claim, true: Fraction) -> bool:
    """A gap as a part of the smaller or larger number; right too where it is rounded to a percent."""
    said, gap = abs(claim.number), true if claim.number > 0 else -true
    rounded = claim.leeway is Leeway.PLAIN and abs(gap - said) <= Fraction(5, 1000)
    return rounded or within(claim.leeway, said, gap)


def _alike(leeway: Leeway, first: Fraction, second: Fraction) -> bool:
    """Shown values that are equal; with *about* the smaller at least 90 % of the larger, with *almost* 85 %.

    *At least as much* and *more than two apples* say which one is larger.
    """
    if leeway in {Leeway.OVER, Leeway.AT_LEAST, Leeway.UNDER, Leeway.AT_MOST}:
        return within(leeway, second, first)
    if leeway in {Leeway.ABOUT, Leeway.ALMOST}:
        lowest = BOUNDS[leeway][0] or Fraction(1)
        return min(first, second) >= lowest * max(first, second)
    return first == second
