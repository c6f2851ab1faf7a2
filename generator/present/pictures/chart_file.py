"""The file that the chart to explore is drawn from."""

from __future__ import annotations

from plotly.io import to_json

from generator.compute.result import Comparison
from generator.present.pictures.chart_layout import PAGE_COLOURS
from generator.present.pictures.chart_ways import chart_ways
from generator.present.words.say import Say


def chart_json(comparison: Comparison, say: Say) -> str:
    """Every way to look at a comparison, as figures of the plotting library without its default template."""
    ways = [
        {"name": way.name, "says": way.says, "data": way.data, "layout": way.layout}
        for way in chart_ways(comparison, say)
    ]
    # Its classes would look at every property again, for most of a lesson's time; a test lets them.
    return str(to_json({"colours": PAGE_COLOURS, "ways": ways}, validate=False))
