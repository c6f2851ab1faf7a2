"""The charts of the report as figures of the plotting library: bars of shares with their intervals."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from textwrap import wrap

from plotly.io import to_json

from generator.present.pictures.chart_layout import Json, any_layout
from generator.present.report.view import ReachView, ReportView, ShareView
from generator.present.words.say import Say

_LINE = 18
"""Letters of a name in a line."""
INK, BAR, RULE = "--ink", "--slate", "--plum-wash"
"""Properties of the page's style, whose colours the page puts in their place."""


def charts_json(view: ReportView, say: Say) -> str:
    """By the id of each chart's place on the page, its data and layout."""
    return str(to_json(dict(_charts(view, say)), validate=False))


def _charts(view: ReportView, say: Say) -> Iterator[tuple[str, Json]]:
    yield "reach", _reach(view.lessons, say)
    for at, lesson in enumerate(view.details, 1):
        yield f"stops-{at}", _shares(lesson.stops, say)
        for number, question in enumerate(lesson.questions, 1):
            if any(one.bar for one in question.shares):
                yield f"question-{at}-{number}", _shares(question.shares, say)


def _reach(lessons: Sequence[ReachView], say: Say) -> Json:
    rows = [one for one in lessons if one.codes is not None]
    bars = _bars([one.codes for one in rows], [one.told for one in rows])
    return {"data": [bars], "layout": _layout([one.title for one in rows], None, say)}


def _shares(shares: Sequence[ShareView], say: Say) -> Json:
    rows = [(one, one.bar) for one in shares if one.bar]
    percents = [one.percent for one, _ in rows]
    bars = _bars([float(bar.long) for _, bar in rows], percents)
    bars["error_x"] = {
        "type": "data",
        "symmetric": False,
        "array": [float(bar.high) - float(bar.long) for _, bar in rows],
        "arrayminus": [float(bar.long) - float(bar.low) for _, bar in rows],
        "color": INK,
    }
    return {"data": [bars], "layout": _layout([one.name for one, _ in rows], 100, say)}


def _bars(long: Sequence[object], said: Sequence[str]) -> Json:
    return {
        "type": "bar",
        "orientation": "h",
        "y": list(range(len(long))),
        "x": list(long),
        "hovertext": list(said),
        "hoverinfo": "text",
        "marker": {"color": BAR},
    }


def _layout(names: Sequence[str], most: int | None, say: Say) -> Json:
    return any_layout(say) | {
        "font": {"size": 15, "color": INK},
        "height": 48 * len(names) + 90,
        "bargap": 0.4,
        "xaxis": {
            **({"range": [0, most]} if most else {"rangemode": "tozero"}),
            "ticksuffix": "%" if most else "",
            "nticks": 6,
            "tickangle": 0,
            "gridcolor": RULE,
        },
        "yaxis": {
            "autorange": "reversed",
            "automargin": True,
            "tickvals": list(range(len(names))),
            "ticktext": ["<br>".join(map(_as_text, wrap(name, _LINE))) for name in names],
        },
        "margin": {"l": 12, "r": 24, "t": 12, "b": 48},
    }


def _as_text(name: str) -> str:
    """The library reads marks of its own in a name."""
    return escape(name, quote=False)
