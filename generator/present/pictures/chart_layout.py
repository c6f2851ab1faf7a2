"""How the chart to explore is laid out, in the terms of plotly.js: bars of rows, and columns of sides.

Its colours are those of the light look; the page puts its own in their place, by ``PAGE_COLOURS``.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from decimal import Decimal
from textwrap import wrap
from typing import TypeAlias

from generator.compute.result import Comparison
from generator.present.pictures.colours import LIGHT
from generator.present.words.amounts import food_name
from generator.present.words.families import MEASURE
from generator.present.words.say import Say, digits

Json: TypeAlias = dict[str, object]

PAGE_COLOURS = {
    LIGHT.ink: "--ink",
    LIGHT.card: "--card",
    LIGHT.thread: "--thread",
    LIGHT.plum_wash: "--plum-wash",
    LIGHT.slate: "--slate",
    LIGHT.apricot: "--apricot",
}
"""The property of a page's style that stands for each colour."""
_NAME_SIZE = 16
_NARROW = 11  # signs of a side's name in a line: two columns stand beside each other on a phone


def row_bars(
    comparison: Comparison, side: int | None, places: Sequence[tuple[int, Decimal]], say: Say
) -> Json:
    """Lying bars in the colour of one side, or of neither.

    Args:
        comparison: whose sides they are.
        side: 0, 1, or nothing for what is even.
        places: how far down a bar stands, and the value it is as long as.
        say: the language.
    """
    colour = LIGHT.thread if side is None else LIGHT.sides[side]
    return {
        "type": "bar",
        "name": say("chart_even") if side is None else comparison.stop.sides[side],
        "orientation": "h",
        "y": [place for place, _ in places],
        "x": [digits(value) for _, value in places],
        "text": [say.quantity(value, comparison.stop.measure) for _, value in places],
        "textposition": "outside",
        "hoverinfo": "text",
        "marker": {"color": colour} | ({"pattern": _weave(side)} if side is not None else {}),
    }


def row_layout(
    comparison: Comparison, names: Sequence[tuple[str, str]], largest: Decimal, say: Say
) -> Json:
    """Names stand above their bars, one a line, not beside them: on a phone there is no beside."""
    measure = comparison.stop.measure
    written = [
        {
            "text": name,
            "x": 0,
            "xanchor": "left",
            "y": place - 0.28,
            "yanchor": "bottom",
            "yshift": 20 * (1 - side),
            "showarrow": False,
        }
        for place, pair in enumerate(names)
        for side, name in enumerate(pair)
    ]
    return any_layout(say) | {
        "annotations": written,
        "height": 120 * len(names) + 160,
        "xaxis": {
            "title": {
                "text": f"{say(MEASURE.key(measure))} ({measure.unit})",
                "standoff": 10,
                "font": {"size": _NAME_SIZE},
            },
            "type": "linear",
            "range": [0, float(largest) * 1.6 or 1],  # room for the number after the longest bar
            "nticks": 5,
            "gridcolor": LIGHT.plum_wash,
        },
        "yaxis": {"range": [len(names) - 0.4, -0.7], "visible": False},
        "legend": {"orientation": "h", "x": 0, "y": 1, "yanchor": "bottom"},
        "margin": {"l": 12, "r": 12, "t": 60, "b": 72},
    }


def columns(
    comparison: Comparison, pieces: Iterable[tuple[Sequence[object], Sequence[str]]], say: Say
) -> list[Json]:
    """A standing column for each side, made of one piece a row, the first at the foot.

    Args:
        comparison: whose rows they are.
        pieces: for each row, how high it is on both sides, and how that is said.
        say: the language.
    """
    sides = [_lines(side) for side in comparison.stop.sides]
    made: list[Json] = []
    for row, (heights, said) in zip(comparison.rows, pieces, strict=True):
        told = [
            f"{_lines(food_name(held, say))}<br>{words}"
            for held, words in zip(row.sides, said, strict=True)
        ]
        made.append(
            {
                "type": "bar",
                "x": sides,
                "y": list(heights),
                "text": told,
                "textangle": 0,
                "textposition": "inside",
                "insidetextanchor": "middle",
                "insidetextfont": {"color": LIGHT.card},
                "hoverinfo": "text",
                "marker": {"color": list(LIGHT.sides), "line": {"color": LIGHT.card, "width": 2}},
            }
        )
    return made


def column_layout(comparison: Comparison, highest: float, say: Say, unit: str = "") -> Json:
    """Each piece says what it is; what is too low for words tells them under the pointer."""
    return any_layout(say) | {
        "barmode": "stack",
        "bargap": 0.12,
        "height": 460,
        "showlegend": False,
        "uniformtext": {"minsize": 11, "mode": "hide"},
        "xaxis": {"type": "category", "tickangle": 0, "tickfont": {"size": _NAME_SIZE}},
        "yaxis": {
            "range": [0, highest * 1.02 or 1],
            "ticksuffix": unit or f" {comparison.stop.measure.unit}",
            "nticks": 6,
            "gridcolor": LIGHT.plum_wash,
            "automargin": True,
        },
        "margin": {"l": 12, "r": 12, "t": 12, "b": 60},
    }


def any_layout(say: Say) -> Json:
    """What the layout of every chart begins with: no ground of its own, letters, signs of numbers."""
    return {
        "paper_bgcolor": "rgba(0,0,0,0)",
        "plot_bgcolor": "rgba(0,0,0,0)",
        "font": {"size": _NAME_SIZE, "color": LIGHT.ink},
        "separators": separators(say),
    }


def separators(say: Say) -> str:
    """Decimal sign and thousands sign, as the plotting library wants them: ``.,`` in English."""
    signs = [sign for sign in say.number(Decimal("1234567.5")) if not sign.isdigit()]
    return signs[-1] + signs[0]


def _weave(side: int) -> Json:
    """Dots for the first side, slanted lines for the second, in the card's colour on the bar's."""
    return {"shape": "./"[side], "fillmode": "overlay", "fgcolor": LIGHT.card, "fgopacity": 0.6}


def _lines(name: str) -> str:
    """A name in short lines; a word is never broken."""
    return "<br>".join(wrap(name, _NARROW, break_long_words=False))
