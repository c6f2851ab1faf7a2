"""Rows for a comparison out of the foods of the library, by what a lesson needs."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal

from generator.compute.count import Count, count_moves
from generator.compute.gap import Gap
from generator.compute.offers import Offer
from generator.compute.pair_wishes import PairWishes
from generator.compute.trading import Trading, trading

DRINK_BESIDE_FOOD, ONE_GROUP = 3, 2
"""What a pair is put back by in the ranking; ours, no source."""


@dataclass(frozen=True, slots=True)
class Pair:
    """A row that has what was asked."""

    sides: tuple[Offer, Offer]
    """In the order of the alphabet, so that no side holds more by rule."""
    gap: Gap
    """Between the shown values."""
    trading: Trading
    """What its subtraction needs."""
    count: Count | None
    """Where a step of counting was asked for."""


def pairs(offered: Iterable[Offer], wishes: PairWishes) -> Iterator[Pair]:
    """Every pair of two foods that has what is wished, in no order that means anything.

    Args:
        offered: as ``offers`` gives them, the smallest value first.
        wishes: what the row has to have.
    """
    fitting = [one for one in offered if wishes.suits(one.food, one.value)]
    tenths = [one.tenths for one in fitting]
    least, most = wishes.gap or (Decimal(1) / 10, Decimal(10**6))
    need = int(least * 10)
    known: dict[tuple[int, int], tuple[Trading, Count | None] | None] = {}
    for at, small in enumerate(fitting):
        first = max(at + 1, bisect_left(tenths, tenths[at] + need))
        for large in fitting[first : bisect_right(tenths, tenths[at] + int(most * 10))]:
            if small.food is large.food or not wishes.holds_wanted(small.food, large.food):
                continue
            numbers = (large.tenths, small.tenths)
            if numbers not in known:
                known[numbers] = _worked(large.value, small.value, wishes)
            if (worked := known[numbers]) is not None:
                yield _pair(small, large, *worked)


def best(found: Iterable[Pair], number: int, wanted: str | None = None) -> tuple[Pair, ...]:
    """The best pairs, each food in one of them while there are others.

    Args:
        found: that have what is wished.
        number: how many at most.
        wanted: id of a food that is meant to be in every one.
    """
    ranked = sorted(found, key=_order)
    used: Counter[str] = Counter()
    chosen: list[Pair] = []
    while len(chosen) < number and ranked:
        fresh = (pair for pair in ranked if not any(used[name] for name in _ids(pair)))
        pair = next(fresh, None)
        if pair is None:
            used.clear()
            pair = ranked[0]
        ranked.remove(pair)
        chosen.append(pair)
        used.update(name for name in _ids(pair) if name != wanted)
    return tuple(chosen)


def _worked(
    larger: Decimal, smaller: Decimal, wishes: PairWishes
) -> tuple[Trading, Count | None] | None:
    """How two shown values are worked out; nothing where that is not what is wished."""
    scale = 1 if larger % 1 == smaller % 1 == 0 else 10
    asks = trading(int(larger * scale), int(smaller * scale))
    if wishes.trading not in {None, asks} or not wishes.fits_grades(larger, smaller):
        return None
    if wishes.per is None:
        return asks, None
    count = count_moves(larger - smaller, wishes.per)
    return (asks, count) if wishes.counts_well(count) else None


def _pair(small: Offer, large: Offer, asks: Trading, count: Count | None) -> Pair:
    first, second = sorted((small, large), key=lambda one: (one.food.id, one.amount))
    gap = Gap(first.value, second.value, first.exact - second.exact)
    return Pair((first, second), gap, asks, count)


def _order(pair: Pair) -> tuple[int, int, str, str, str, str]:
    """How well known the two are, and how different; then by name, so that it is always the same."""
    first, second = pair.sides
    one, other = first.food.entry, second.food.entry
    alike = ONE_GROUP * (one.group == other.group) + DRINK_BESIDE_FOOD * (one.drink != other.drink)
    known = first.rank + second.rank + alike
    worst = max(first.rank, second.rank)
    return known, worst, first.food.id, second.food.id, first.amount, second.amount


def _ids(pair: Pair) -> tuple[str, str]:
    return pair.sides[0].food.id, pair.sides[1].food.id
