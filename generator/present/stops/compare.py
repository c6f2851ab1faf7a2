"""A compare stop as a gap calculator."""

from __future__ import annotations

from dataclasses import asdict

from markupsafe import Markup

from generator.compute.gap import Gap
from generator.compute.result import Comparison, Row
from generator.model.stops.compare import CompareStop, Solve
from generator.present.pictures.chart import chart_view
from generator.present.pictures.columns import columns
from generator.present.pictures.number_line import number_line
from generator.present.stops.head import Telling, head
from generator.present.views.comparison import RowView, TotalView
from generator.present.views.stops import CompareView
from generator.present.words.amounts import (
    SIDE_KEYS,
    blocks_view,
    food_name,
    gap_working,
    holding_view,
)
from generator.present.words.often import often_views
from generator.present.words.prose import inline
from generator.present.words.say import Say, digits
from generator.present.words.sources import source_views


def compare_view(index: int, stop: CompareStop, telling: Telling) -> CompareView:
    """The gap calculator of a compare stop."""
    comparison = telling.result.comparisons[stop.id]
    say = telling.say
    asks_total = Solve.TOTAL in stop.solve
    return CompareView(
        **asdict(head(index, stop, telling)),
        prompt=inline(stop.prompt) if stop.prompt else Markup(""),
        measure=say(f"measure_{stop.measure}"),
        unit=stop.measure.unit,
        about=say(f"about_{stop.measure}"),
        sides=stop.sides,
        rows=tuple(
            _row_view(number, row, stop, say) for number, row in enumerate(comparison.rows, 1)
        ),
        total=_total_view(comparison, say) if asks_total or len(comparison.rows) > 1 else None,
        ask_total=asks_total,
        reveal=inline(stop.reveal) if stop.reveal else Markup(""),
        chart=chart_view(comparison, telling),
        often=often_views(tuple(held for row in comparison.rows for held in row.sides), say),
        sources=source_views(comparison, say),
    )


def _row_view(number: int, row: Row, stop: CompareStop, say: Say) -> RowView:
    first, second = (
        holding_view(held, side, stop.sides[side], stop.measure, say)
        for side, held in enumerate(row.sides)
    )
    gap, count = row.gap, row.count
    asks_count = count is not None and Solve.COUNT in stop.solve
    return RowView(
        id=f"{stop.id}-row-{number}",
        number=number,
        legend=say("row_legend", number=number, first=first.name, second=second.name),
        first=first,
        second=second,
        gap=say.quantity(gap.size, stop.measure),
        gap_number=digits(gap.size),
        larger_number=digits(gap.larger),
        smaller_number=digits(gap.smaller),
        holder="" if gap.holder is None else stop.sides[gap.holder],
        left=blocks_view(gap.size, say, in_tens=True),
        left_key=SIDE_KEYS[gap.holder or 0],
        line=number_line(gap, say),
        ask_gap=Solve.GAP in stop.solve,
        ask_count=asks_count,
        count=say.number(count.whole) if count else "",
        count_number=str(count.whole) if count else "",
        left_over=say.quantity(count.left_over, stop.measure) if count and count.left_over else "",
        per_number=digits(count.per) if count else "",
        hint=row_hint(gap, say),
        working=gap_working(gap, count if asks_count else None, stop.sides, stop.measure, say),
        columns=columns(digits(gap.larger), digits(gap.smaller), digits(gap.size)),
    )


def row_hint(gap: Gap, say: Say) -> str:
    """The first step, without the answer."""
    if gap.holder is None:
        return say("row_hint_even")
    return say("row_hint", larger=say.number(gap.larger), smaller=say.number(gap.smaller))


def _total_view(comparison: Comparison, say: Say) -> TotalView:
    stop, total = comparison.stop, comparison.total
    working = gap_working(total, None, stop.sides, stop.measure, say)
    sums = tuple(
        " + ".join(say.number(row.sides[side].shown.value) for row in comparison.rows)
        + f" = {say.number(value)}"
        for side, value in enumerate((total.first, total.second))
    )
    return TotalView(
        first=say.quantity(total.first, stop.measure),
        second=say.quantity(total.second, stop.measure),
        first_number=digits(total.first),
        second_number=digits(total.second),
        gap=say.quantity(total.size, stop.measure),
        gap_number=digits(total.size),
        working=type(working)((*sums, *working.lines), working.says),
    )


def row_names(row: Row, say: Say) -> str:
    """``Apple and Apple pie``."""
    return say.listed(tuple(food_name(held, say) for held in row.sides))
