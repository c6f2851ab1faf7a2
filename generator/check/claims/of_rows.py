"""The two numbers of a claim about gaps, and about how many rows a side holds more in."""

from __future__ import annotations

from decimal import Decimal

from generator.check.claims.claim import Claim
from generator.check.claims.pair import NOTHING_KNOWN, Pair, Subject
from generator.check.rows import rows_at
from generator.compute.result import Comparison
from generator.language.form import Form
from generator.language.grammar import Grammar


def gaps(claim: Claim, sentence: str, comparison: Comparison, grammar: Grammar) -> Subject:
    """The gaps of the rows that a sentence calls by number; nothing where it calls none."""
    count = len(comparison.rows)
    called = [(at, row % count) for at, row in rows_at(sentence, grammar) if row < count]
    if not called:
        return NOTHING_KNOWN
    every = tuple(row.gap.size for row in comparison.rows)
    before = [row for at, row in called if at < claim.start]
    after = [row for at, row in called if at >= claim.end]
    if claim.form in {Form.MOST, Form.LEAST}:
        row = (before[-1:] or after)[0]
        return Subject((Pair(every[row], every[row], others=every, gaps=True),), named=True)
    if before and after:
        one, other = before[-1], after[0]
    elif len(called) > 1:
        one, other = called[0][1], called[1][1]
    else:
        return NOTHING_KNOWN
    return Subject((Pair(every[one], every[other], others=every, gaps=True),), named=True)


def rows_won(claim: Claim, side: int | None, comparison: Comparison) -> Subject:
    """In how many rows a side holds more, or less where that is claimed."""
    if side is None:
        return NOTHING_KNOWN
    held = [
        (row.sides[side].shown.value, row.sides[1 - side].shown.value) for row in comparison.rows
    ]
    won = sum(mine > other if claim.number > 0 else mine < other for mine, other in held)
    return Subject((Pair(Decimal(won), Decimal(len(held))),), named=True)
