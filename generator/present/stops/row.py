"""The rows of a gap calculator, and its total."""

from __future__ import annotations

from dataclasses import replace

from markupsafe import Markup

from generator.compute.count import Count
from generator.compute.gap import Gap
from generator.compute.result import Comparison
from generator.model.names import TOTAL
from generator.model.stops.compare import Help, Solve
from generator.present.pictures.block_rings import left_view, rings_view
from generator.present.pictures.columns import columns
from generator.present.pictures.number_line import number_line
from generator.present.views.comparison import CountView, RowView, TotalView
from generator.present.words.amounts import (
    SIDE_KEYS,
    gap_working,
    holding_view,
)
from generator.present.words.counting import (
    count_hint,
    count_question,
    count_up_sum,
    count_up_words,
)
from generator.present.words.number import number, quantity
from generator.present.words.say import Say, digits

_HUNDRED = 100


def row_view(at: int, comparison: Comparison, say: Say, *, asked_for: bool) -> RowView:
    """One row, by its place counted from 0.

    Args:
        at: its place.
        comparison: with its numbers.
        say: the words of the page.
        asked_for: whether the lesson asks which of the foods holds so much.
    """
    stop, row, place = comparison.stop, comparison.rows[at], at + 1
    first, second = (
        replace(holding_view(held, side, stop.sides[side], stop.measure, say), asked_for=asked_for)
        for side, held in enumerate(row.sides)
    )
    gap, help_ = row.gap, stop.rows[at].help
    counts = comparison.counts if Solve.COUNT in stop.solve else None
    count = counts.rows[at] if counts else None
    return RowView(
        id=row_address(stop.id, row.id),
        number=place,
        question=say("row_question", first=say.inside(first.name), second=say.inside(second.name)),
        help=help_,
        hops=number_line(gap, say, sized=False) if help_ is Help.HOPS else Markup(""),
        count_up=count_up_words(gap, say),
        hops_added=count_up_sum(gap, say),
        label=say("card_row", number=place),
        legend=say("row_legend", number=place, first=first.name, second=second.name),
        first=first,
        second=second,
        gap=quantity(gap.size, stop.measure, say),
        holder="" if gap.holder is None else stop.sides[gap.holder],
        left=left_view(gap, count, say),
        left_hundred="hundred" if count and count.per == _HUNDRED else "tens",
        rings=rings_view(count, say) if count else None,
        left_key=SIDE_KEYS[gap.holder or 0],
        line=number_line(gap, say),
        ask_gap=Solve.GAP in stop.solve,
        count=_count_view(gap, count, say) if count else None,
        hint=row_hint(gap, say),
        working=gap_working(gap, count, stop.sides, stop.measure, say),
        columns=columns(digits(gap.larger), digits(gap.smaller), digits(gap.size)),
    )


def row_address(stop: str, row: str) -> str:
    """Address of a row on the page, by the ids of its stop and its own; no stop's id holds two hyphens."""
    return f"{stop}--{row}"


def _count_view(gap: Gap, count: Count, say: Say) -> CountView:
    left = say.number(count.left_over) if count.left_over else ""
    return CountView(
        gap=number(gap.size, say),
        whole=number(count.whole, say),
        per=number(count.per, say),
        left_over=left,
        question=count_question(count.per, say),
        hint=count_hint(count.per, say),
    )


def row_hint(gap: Gap, say: Say) -> str:
    """The first step, without the answer."""
    if gap.holder is None:
        return say("row_hint_even")
    return say("row_hint", larger=say.number(gap.larger), smaller=say.number(gap.smaller))


def total_view(comparison: Comparison, say: Say) -> TotalView:
    """Both totals and their gap."""
    stop, total = comparison.stop, comparison.total
    working = gap_working(total, None, stop.sides, stop.measure, say)
    sums = tuple(
        say.from_left(
            " + ".join(say.number(row.sides[side].shown.value) for row in comparison.rows)
            + f" = {say.number(value)}"
        )
        for side, value in enumerate((total.first, total.second))
        if len(comparison.rows) > 1
    )
    return TotalView(
        id=row_address(stop.id, TOTAL),
        first=quantity(total.first, stop.measure, say),
        second=quantity(total.second, stop.measure, say),
        gap=quantity(total.size, stop.measure, say),
        working=type(working)((*sums, *working.lines), working.says),
    )
