"""What a claim about one food may be held against besides the food beside it in its row.

It may go on about a food that was named before (*the egg holds 60, the yogurt twice as much*), speak
of one row or one side alone (*in row one the soup holds the most*), or of a whole side. Any of them
that makes it true will do.
"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from generator.check.claims.claim import Claim
from generator.check.claims.mentions import Mention
from generator.check.claims.of_foods import value_at
from generator.check.claims.pair import Pair
from generator.compute.result import Comparison
from generator.language.form import Form


def of_earlier(
    claim: Claim, food: Mention, earlier: tuple[Mention, ...], comparison: Comparison
) -> Iterator[Pair]:
    """A food against the foods of the clause or the sentence before."""
    for mine in sorted(food.seats):
        for one in earlier:
            for other in sorted(one.seats - food.seats):
                pair = Pair(value_at(comparison, mine), value_at(comparison, other))
                yield pair if food.start < claim.start else pair.turned


def of_some(
    claim: Claim, food: Mention, rows: list[int], side: int | None, comparison: Comparison
) -> Iterator[Pair]:
    """*The most* and *the least* among the foods of some rows, or of one side."""
    if claim.form not in {Form.MOST, Form.LEAST}:
        return
    for mine in sorted(food.seats):
        if mine[0] in rows:
            limited = tuple(held.shown.value for row in rows for held in comparison.rows[row].sides)
            yield _among(mine, limited, comparison)
        if side is not None:
            own = tuple(row.sides[side].shown.value for row in comparison.rows)
            yield _among(mine, own, comparison)


def of_totals(
    food: Mention, side: int | None, comparison: Comparison, *, totals: bool
) -> Iterator[Pair]:
    """A food against all of a side, or of both."""
    total = comparison.total
    sums: list[Decimal] = [] if side is None else [(total.first, total.second)[side]]
    if totals:
        sums += [total.first, total.second, total.first + total.second]
    for mine in sorted(food.seats):
        for one in sums:
            yield Pair(value_at(comparison, mine), one)


def _among(mine: tuple[int, int], others: tuple[Decimal, ...], comparison: Comparison) -> Pair:
    value = value_at(comparison, mine)
    return Pair(value, value, others=others)
