"""The two sides of a comparison as bars: a picture in the page, and a figure to explore on request."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from plotly.io import to_json

from generator.compute.result import Comparison
from generator.compute.rounding import whole
from generator.present.pictures.colours import LIGHT
from generator.present.views.comparison import BarView, ChartView
from generator.present.words.amounts import SIDE_KEYS, food_name
from generator.present.words.families import MEASURE
from generator.present.words.say import Say, digits


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
        library="assets/plotly-basic.min.js",
    )


def figure_json(comparison: Comparison, say: Say) -> str:
    """The same bars as a figure of the plotting library, without its default template."""
    stop = comparison.stop
    places = list(range(len(comparison.rows)))
    bars = [
        {
            "type": "bar",
            "name": stop.sides[side],
            "orientation": "h",
            "y": places,
            "x": [digits(row.sides[side].shown.value) for row in comparison.rows],
            "text": [
                say.quantity(row.sides[side].shown.value, stop.measure) for row in comparison.rows
            ],
            "textposition": "outside",
            "hovertext": [food_name(row.sides[side], say) for row in comparison.rows],
            "hoverinfo": "text+x",
            "marker": {"color": LIGHT.sides[side], "pattern": _weave(side)},
        }
        for side in (0, 1)
    ]
    # Its classes would look at every property again, for most of a lesson's time; a test lets them.
    return str(to_json({"data": bars, "layout": _layout(comparison, say)}, validate=False))


def _weave(side: int) -> dict[str, object]:
    """Dots for the first side, slanted lines for the second, in white on the bar's colour."""
    return {"shape": "./"[side], "fillmode": "overlay", "fgcolor": "#FFFFFF", "fgopacity": 0.6}


def _layout(comparison: Comparison, say: Say) -> dict[str, object]:
    """Names stand above their bars, one a line, not beside them: on a phone there is no beside."""
    largest = max((held.shown.value for held in comparison.holdings), default=0)
    names = [
        {
            "text": food_name(row.sides[side], say),
            "x": 0,
            "xanchor": "left",
            "y": place - 0.28,
            "yanchor": "bottom",
            "yshift": 20 * (1 - side),
            "showarrow": False,
        }
        for place, row in enumerate(comparison.rows)
        for side in (0, 1)
    ]
    measure = comparison.stop.measure
    return {
        "barmode": "group",
        "bargap": 0.46,
        "annotations": names,
        "height": 120 * len(comparison.rows) + 160,
        "xaxis": {
            "title": {
                "text": f"{say(MEASURE.key(measure))} ({measure.unit})",
                "standoff": 10,
                "font": {"size": 16},
            },
            "type": "linear",
            "range": [0, float(largest) * 1.6 or 1],  # room for the number after the longest bar
            "nticks": 5,
        },
        "yaxis": {"range": [len(comparison.rows) - 0.4, -0.7], "visible": False},
        "legend": {"orientation": "h", "x": 0, "y": 1, "yanchor": "bottom"},
        "margin": {"l": 12, "r": 12, "t": 60, "b": 72},
        "paper_bgcolor": "rgba(0,0,0,0)",
        "plot_bgcolor": "rgba(0,0,0,0)",
        "font": {"size": 16},
        "separators": _separators(say),
    }


def _separators(say: Say) -> str:
    """Decimal sign and thousands sign, as the plotting library wants them: ``.,`` in English."""
    signs = [sign for sign in say.number(Decimal("1234567.5")) if not sign.isdigit()]
    return signs[-1] + signs[0]
