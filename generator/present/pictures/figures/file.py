"""A figure as a picture file of its own, so that a lesson's page need not carry its strokes."""

from __future__ import annotations

from markupsafe import Markup

from generator.model.pose import Pose
from generator.present.pictures.colours import DARK, LIGHT, Colours
from generator.present.pictures.figures.drawing import figure

FOLDER = "assets/figures"
"""Where the pictures stand on the site."""


def picture_name(move: str, number: int, *, seated: bool) -> str:
    """``assets/figures/march-1.svg``; the poses of a move are counted from 1."""
    return f"{FOLDER}/{move}{'-seated' if seated else ''}-{number}.svg"


def drawn_alone(pose: Pose) -> Markup:
    """SVG of one pose that stands by itself: on a slide, with the light colours of a page."""
    svg = figure(pose).replace(
        "<svg ", f'<svg xmlns="http://www.w3.org/2000/svg" color="{LIGHT.ink}" ', 1
    )
    return Markup(svg.replace('class="figure-head"', f'color="{LIGHT.plum}"'))  # noqa: S704  # drawn from numbers only


def picture_file(pose: Pose) -> str:
    """SVG of one pose, whole in itself."""
    svg = figure(pose).replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ', 1)
    start = svg.index(">") + 1
    return f"{svg[:start]}<style>{_STYLE}</style>{svg[start:]}\n"


def _style(colours: Colours) -> str:
    return (
        f"svg{{color:{colours.ink}}}.figure-head{{color:{colours.plum}}}"
        f".figure-prop{{stroke:{colours.thread}}}"
    )


_STYLE = f"{_style(LIGHT)}@media(prefers-color-scheme:dark){{{_style(DARK)}}}"
"""A picture sees no style of its page."""
