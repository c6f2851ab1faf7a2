"""What a teacher looks for while children work: signs of understanding, from a lesson's own numbers.

Which signs are worth a look is common practice, no source; the strategies named are those the page shows.
"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from generator.compute.count_up import count_up
from generator.compute.day import DayBalance
from generator.compute.estimate import rounded
from generator.compute.gap import Gap
from generator.compute.result import Comparison, Movement
from generator.compute.stops.compare import estimated
from generator.compute.trading import Trading, trading
from generator.model.stops.compare import Solve
from generator.present.words.say import Say

_PLAIN = 20
"""Up to here a child subtracts in the head, and writes nothing in columns; our choice."""


def while_comparing(comparison: Comparison, say: Say) -> Iterator[str]:
    """Signs for a comparison: one a line, none twice, each at the first row that shows it."""
    if found := estimated(comparison):
        yield _estimating(found[1], say)
    gaps = tuple((say.number(at), row.gap) for at, row in enumerate(comparison.rows, 1))
    yield from _first(_choosing(comparison, row, gap, say) for row, gap in gaps)
    yield from _first(_counting_up(row, gap, say) for row, gap in gaps)
    yield from _first(_trading(row, gap, say) for row, gap in gaps)
    yield from _first(_nothing_taken(row, gap, say) for row, gap in gaps)
    yield from _first(_even(row, gap, say) for row, gap in gaps)
    if Solve.TOTAL in comparison.stop.solve and len(gaps) > 1:
        first, second = map(say.number, (comparison.total.first, comparison.total.second))
        yield say("look_total", first=first, second=second)


def while_moving(movement: Movement, say: Say) -> Iterator[str]:
    """Signs for a move stop: how a count is found, what is left over, and that it is shared."""
    found = [(one.row.gap, one.count) for one in movement.moved]
    if found:
        gap, count = max(found, key=lambda one: one[1].whole)
        per, whole = say.number(count.per), say.number(count.whole)
        yield say("look_count", gap=say.number(gap.size), per=per, whole=whole)
    yield from _first(
        say("look_left_over", gap=say.number(gap.size), left=say.number(count.left_over))
        for gap, count in found
        if count.left_over
    )
    yield say("look_share")


def in_a_day(balance: DayBalance, say: Say) -> Iterator[str]:
    """Signs for a day: both numbers are read before it is said which way it leans."""
    eaten, needed = say.number(balance.eaten), say.number(balance.needed)
    yield say("look_day", eaten=eaten, needed=needed)
    larger, smaller = say.number(balance.both.larger), say.number(balance.both.smaller)
    yield say("look_columns", larger=larger, smaller=smaller)


def _first(lines: Iterator[str]) -> Iterator[str]:
    yield from [line for line in lines if line][:1]


def _estimating(gap: Gap, say: Say) -> str:
    near = rounded(gap)
    return say(
        "look_estimate",
        larger=say.number(gap.larger),
        smaller=say.number(gap.smaller),
        near_larger=say.number(near.larger),
        near_smaller=say.number(near.smaller),
    )


def _choosing(comparison: Comparison, row: str, gap: Gap, say: Say) -> str:
    """The larger number on the second side is where children take it the wrong way round."""
    if gap.holder != 1:
        return ""
    side = comparison.stop.sides[1]
    return say("look_side", row=row, side=side, larger=say.number(gap.larger))


def _counting_up(row: str, gap: Gap, say: Say) -> str:
    hops = count_up(gap.smaller, gap.larger) if gap.smaller and gap.size else ()
    if len(hops) < 2:
        return ""
    by_way = say.listed(tuple(say.number(hop.end) for hop in hops[:-1]))
    smaller, larger = say.number(gap.smaller), say.number(gap.larger)
    return say("look_hops", row=row, smaller=smaller, larger=larger, by_way=by_way)


def _trading(row: str, gap: Gap, say: Say) -> str:
    """Tenths trade as whole numbers do."""
    if gap.larger <= _PLAIN:
        return ""
    numbers = {"row": row, "larger": say.number(gap.larger), "smaller": say.number(gap.smaller)}
    match trading(*(int(one * Decimal(10)) for one in (gap.larger, gap.smaller))):
        case Trading.ZERO:
            return say("look_trade_zero", **numbers)
        case Trading.TENS:
            return say("look_trade", **numbers)
        case Trading.NONE:
            return ""


def _nothing_taken(row: str, gap: Gap, say: Say) -> str:
    if gap.smaller or not gap.larger:
        return ""
    return say("look_zero", row=row, larger=say.number(gap.larger))


def _even(row: str, gap: Gap, say: Say) -> str:
    return say("look_even", row=row) if gap.holder is None else ""
