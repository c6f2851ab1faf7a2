"""The two sides of a comparison as bars in the page, and where the chart to explore is kept."""

from __future__ import annotations

from fractions import Fraction

from generator.compute.result import Comparison
from generator.compute.rounding import whole
from generator.present.views.comparison import BarView, ChartView
from generator.present.words.amounts import SIDE_KEYS, food_name
from generator.present.words.families import MEASURE
from generator.present.words.say import Say

LIBRARY = "assets/plotly-bars.min.js"
"""What draws the chart to explore; a learner asks for it."""


def chart_view(comparison: Comparison, say: Say, folder: str) -> ChartView:
    """Bars for each row, to one scale; ``folder`` is where the lesson's pages stand."""
    stop = comparison.stop
    largest = max((held.shown.value for held in comparison.holdings), default=0)
    bars = tuple(
        BarView(
            label=food_name(held, say),
            side_key=SIDE_KEYS[side],
            value=say.quantity(held.shown.value, stop.measure),
            width=str(
                whole(Fraction(held.shown.value * 100) / Fraction(largest)) if largest else 0
            ),
        )
        for row in comparison.rows
        for side, held in enumerate(row.sides)
    )
    return ChartView(
        label=say(
            "chart_label",
            measure=say(MEASURE.key(stop.measure)),
            first=stop.sides[0],
            second=stop.sides[1],
        ),
        bars=bars,
        figure=f"{folder}{stop.id}.chart.json",
        library=LIBRARY,
    )
