"""A figure as a picture file of its own, so that a lesson's page need not carry its strokes."""

from __future__ import annotations

from markupsafe import Markup

from generator.model.pose import Pose
from generator.present.pictures.figures.drawing import figure

FOLDER = "assets/figures"
"""Where the pictures stand on the site."""
INK, PLUM = "#2A1A2C", "#6A1F4F"
_COLOURS = (
    f"svg{{color:{INK}}}.figure-head{{color:{PLUM}}}.figure-prop{{stroke:#8A6F86}}"
    "@media(prefers-color-scheme:dark){svg{color:#F5ECF2}.figure-head{color:#F0A8D0}.figure-prop{stroke:#A48AA0}}"
)
"""Ink, plum and thread of theme/css/tokens.css, light and dark; a picture sees no style of its page."""


def picture_name(move: str, number: int, *, seated: bool) -> str:
    """``assets/figures/march-1.svg``; the poses of a move are counted from 1."""
    return f"{FOLDER}/{move}{'-seated' if seated else ''}-{number}.svg"


def drawn_alone(pose: Pose) -> Markup:
    """SVG of one pose that stands by itself: on a slide, with the light colours of a page."""
    svg = figure(pose).replace(
        "<svg ", f'<svg xmlns="http://www.w3.org/2000/svg" color="{INK}" ', 1
    )
    return Markup(svg.replace('class="figure-head"', f'color="{PLUM}"'))  # noqa: S704  # drawn from numbers only


def picture_file(pose: Pose) -> str:
    """SVG of one pose, whole in itself."""
    svg = figure(pose).replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ', 1)
    start = svg.index(">") + 1
    return f"{svg[:start]}<style>{_COLOURS}</style>{svg[start:]}\n"
