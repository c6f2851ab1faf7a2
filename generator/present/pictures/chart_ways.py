"""What can be seen in the chart to explore: each way to look at the bars, with a sentence of what it shows."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.result import Comparison, Row
from generator.compute.rounding import whole
from generator.present.pictures.chart_layout import (
    Json,
    column_layout,
    columns,
    row_bars,
    row_layout,
)
from generator.present.words.amounts import food_name
from generator.present.words.say import Say, digits

_THICK = 0.3
"""Of a bar, where 1 is from row to row."""


@dataclass(frozen=True, slots=True)
class ChartWay:
    """One way to look at a comparison."""

    name: str
    """What is chosen."""
    says: str
    """What it shows, for whoever does not see it too."""
    data: list[Json]
    """Traces of the plotting library."""
    layout: Json


def chart_ways(comparison: Comparison, say: Say) -> tuple[ChartWay, ...]:
    """Foods side by side; and with more rows than one, sides as columns, parts of them, and gaps by length."""
    ways = [_side_by_side(comparison, say)]
    if len(comparison.rows) > 1:
        ways.append(_stacked(comparison, say))
        if comparison.total.first or comparison.total.second:
            ways.append(_shares(comparison, say))
        ways.append(_gaps(comparison, say))
    return tuple(ways)


def _side_by_side(comparison: Comparison, say: Say) -> ChartWay:
    rows = comparison.rows
    bars = [
        row_bars(
            comparison,
            side,
            [(place, row.sides[side].shown.value) for place, row in enumerate(rows)],
            say,
        )
        for side in (0, 1)
    ]
    names = [_names(row, say) for row in rows]
    largest = max((held.shown.value for held in comparison.holdings), default=Decimal(0))
    layout = row_layout(comparison, names, largest, say) | {"barmode": "group", "bargap": 0.46}
    return ChartWay(say("chart_sides"), say("chart_sides_says"), bars, layout)


def _stacked(comparison: Comparison, say: Say) -> ChartWay:
    totals = _totals(comparison)
    pieces = [
        (
            [digits(held.shown.value) for held in row.sides],
            [say.quantity(held.shown.value, comparison.stop.measure) for held in row.sides],
        )
        for row in comparison.rows
    ]
    says = " ".join(
        say("chart_stacked_says", side=side, total=say.quantity(total, comparison.stop.measure))
        for side, total in zip(comparison.stop.sides, totals, strict=True)
    )
    data = columns(comparison, pieces, say)
    return ChartWay(
        say("chart_stacked"), says, data, column_layout(comparison, float(max(totals)), say)
    )


def _shares(comparison: Comparison, say: Say) -> ChartWay:
    totals = _totals(comparison)
    pieces = []
    for row in comparison.rows:
        shares = [
            Fraction(held.shown.value * 100) / Fraction(total) if total else Fraction(0)
            for held, total in zip(row.sides, totals, strict=True)
        ]
        pieces.append(
            (
                [float(share) for share in shares],
                [say.percent(Decimal(whole(share))) for share in shares],
            )
        )
    says = " ".join(
        _largest_part(comparison, side, total, say) for side, total in enumerate(totals) if total
    )
    data = columns(comparison, pieces, say)
    return ChartWay(say("chart_shares"), says, data, column_layout(comparison, 100, say, "%"))


def _largest_part(comparison: Comparison, side: int, total: Decimal, say: Say) -> str:
    """The food that brings a side the most; the first of several."""
    held = max((row.sides[side] for row in comparison.rows), key=lambda held: held.shown.value)
    share = whole(Fraction(held.shown.value * 100) / Fraction(total))
    return say(
        "chart_shares_says",
        side=comparison.stop.sides[side],
        food=say.inside(food_name(held, say)),
        share=say.percent(Decimal(share)),
        total=say.quantity(total, comparison.stop.measure),
    )


def _gaps(comparison: Comparison, say: Say) -> ChartWay:
    """The longest first; of equal ones, the first row first."""
    rows = sorted(comparison.rows, key=lambda row: -row.gap.size)
    bars = [
        row_bars(comparison, side, places, say)
        for side in (0, 1, None)
        if (
            places := [
                (place, row.gap.size) for place, row in enumerate(rows) if row.gap.holder == side
            ]
        )
    ]
    layout = row_layout(comparison, [_names(row, say) for row in rows], rows[0].gap.size, say)
    longest, shortest = (
        say.quantity(row.gap.size, comparison.stop.measure) for row in (rows[0], rows[-1])
    )
    says = say("chart_gaps_says", longest=longest, shortest=shortest)
    alike = [bar | {"width": _THICK} for bar in bars]  # else each trace goes by its own distances
    return ChartWay(say("chart_gaps"), says, alike, layout | {"barmode": "overlay"})


def _names(row: Row, say: Say) -> tuple[str, str]:
    """The foods of a row, in the order of the sides."""
    first, second = (food_name(held, say) for held in row.sides)
    return first, second


def _totals(comparison: Comparison) -> tuple[Decimal, Decimal]:
    return comparison.total.first, comparison.total.second
