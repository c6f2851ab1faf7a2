"""The two sides of a comparison as bars: a picture in the page, and a figure to explore on request."""

from __future__ import annotations

import plotly.graph_objects as go

from generator.compute.result import Comparison
from generator.present.amounts import SIDE_KEYS, food_name
from generator.present.say import Say, digits
from generator.present.stops.head import Telling
from generator.present.views import BarView, ChartView

_COLOURS = ("#1F5673", "#97480F")
"""Slate and apricot of theme/css/tokens.css, both readable on light paper."""


def chart_view(comparison: Comparison, telling: Telling) -> ChartView:
    """Bars for each row, to one scale."""
    say, stop = telling.say, comparison.stop
    largest = max((held.shown.value for row in comparison.rows for held in row.sides), default=0)
    bars = tuple(
        BarView(
            label=food_name(held, say),
            side_key=SIDE_KEYS[side],
            value=say.quantity(held.shown.value, stop.measure),
            width=str(round(held.shown.value * 100 / largest) if largest else 0),
        )
        for row in comparison.rows
        for side, held in enumerate(row.sides)
    )
    return ChartView(
        label=say(
            "chart_label",
            measure=say(f"measure_{stop.measure}"),
            first=stop.sides[0],
            second=stop.sides[1],
        ),
        bars=bars,
        figure=f"{stop.id}.chart.json",
        library=f"{telling.to_root}assets/plotly-basic.min.js",
    )


def figure_json(comparison: Comparison, say: Say) -> str:
    """The same bars as a figure of the plotting library, without its default template."""
    stop = comparison.stop
    names = [
        say.listed(tuple(food_name(held, say) for held in row.sides)) for row in comparison.rows
    ]
    bars = [
        go.Bar(
            name=stop.sides[side],
            orientation="h",
            y=names,
            x=[digits(row.sides[side].shown.value) for row in comparison.rows],
            text=[
                say.quantity(row.sides[side].shown.value, stop.measure) for row in comparison.rows
            ],
            hovertext=[food_name(row.sides[side], say) for row in comparison.rows],
            hoverinfo="text+x",
            marker={"color": _COLOURS[side], "pattern": {"shape": "./"[side], "solidity": 0.25}},
        )
        for side in (0, 1)
    ]
    axis = {
        "title": {"text": f"{say(f'measure_{stop.measure}')} ({stop.measure.unit})"},
        "type": "linear",
        "rangemode": "tozero",
    }
    layout = go.Layout(
        template="none",
        barmode="group",
        xaxis=axis,
        yaxis={"autorange": "reversed", "automargin": True},
        legend={"orientation": "h", "y": 1.1},
        margin={"l": 8, "r": 8, "t": 8, "b": 48},
        paper_bgcolor="rgba(0,0,0,0)",
        plot_bgcolor="rgba(0,0,0,0)",
        font={"size": 16},
        separators=_separators(say),
    )
    return str(go.Figure(bars, layout).to_json())


def _separators(say: Say) -> str:
    """Decimal sign and thousands sign, as the plotting library wants them: ``.,`` in English."""
    sample = say.number(1234567)
    return ("," if "." in sample else ".") + next(sign for sign in sample if not sign.isdigit())
