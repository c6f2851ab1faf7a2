"""A figure as a picture file of its own, so that a lesson's page need not carry its strokes."""

from __future__ import annotations

import re

from markupsafe import Markup, escape

from generator.model.pose import Pose
from generator.present.pictures.colours import DARK, LIGHT, Colours
from generator.present.pictures.figures.drawing import figures

FOLDER = "assets/figures"
"""Where the pictures stand on the site."""

_HIDDEN = 'aria-hidden="true"'
SHIRT = {LIGHT: "#a58ba1", DARK: "#82667d"}
"""A lighter thread on white and a darker one on dark, so that arms are read in front of it."""


def picture_name(move: str, number: int, *, seated: bool) -> str:
    """``assets/figures/march-1.svg``; the poses of a move are counted from 1."""
    return f"{FOLDER}/{move}{'-seated' if seated else ''}-{number}.svg"


def drawn_alone(poses: tuple[Pose, ...]) -> tuple[Markup, ...]:
    """SVG of poses that stand by themselves: on a slide, with the light colours of a page."""
    return tuple(Markup(_painted(_whole(svg, f' color="{LIGHT.ink}"'))) for svg in figures(poses))  # noqa: S704  # drawn from numbers only


def said_alone(svg: Markup, says: str) -> Markup:
    """A figure of a page by itself, as on paper, with what it shows in words.

    Args:
        svg: as ``figures`` draws it.
        says: the words.
    """
    alone = _painted(_whole(str(svg), f' color="{LIGHT.ink}"'))
    return Markup(alone.replace(_HIDDEN, f'role="img" aria-label="{escape(says)}"', 1))  # noqa: S704  # drawn from numbers, and a text that is escaped


def picture_files(poses: tuple[Pose, ...]) -> tuple[str, ...]:
    """SVG of each pose, whole in itself."""
    return tuple(
        _whole(svg).replace(">", f"><style>{_STYLE}</style>", 1) + "\n" for svg in figures(poses)
    )


def _whole(svg: str, more: str = "") -> str:
    return svg.replace("<svg ", f'<svg xmlns="http://www.w3.org/2000/svg"{more} ', 1)


def _painted(svg: str) -> str:
    """Return a drawing whose parts carry their light colours, for what knows no style."""
    parts = _parts(LIGHT)
    return re.sub(r'class="figure-(\w+)"', lambda found: f'color="{parts[found[1]]}"', svg)


def _parts(colours: Colours) -> dict[str, str]:
    """Return the colour of each part of a drawing."""
    return {
        "head": colours.plum,
        "shirt": SHIRT[colours],
        "prop": colours.thread,
        "way": colours.quiet,
    }


def _style(colours: Colours) -> str:
    parts = "".join(f".figure-{part}{{color:{colour}}}" for part, colour in _parts(colours).items())
    return f"svg{{color:{colours.ink}}}{parts}"


_FORCED = "svg,[class]{color:CanvasText}.figure-shirt{color:GrayText}"
_STYLE = (
    f"{_style(LIGHT)}@media(prefers-color-scheme:dark){{{_style(DARK)}}}"
    f"@media(forced-colors:active){{{_FORCED}}}"
)
"""A picture sees no style of its page."""
