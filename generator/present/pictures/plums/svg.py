"""The drawing as SVG: in a page, whose styles color it, and as a picture by itself."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup, escape

from generator.present.pictures.colours import DARK, LIGHT, Colours
from generator.present.pictures.plums.drawing import SIDES, Drawing, leaf, plum
from generator.present.pictures.plums.plum import HIGH, PLUM
from generator.present.pictures.plums.shapes import length


def plums_in_page(drawing: Drawing, says: str) -> Markup:
    """The drawing as part of a page that has no other.

    Args:
        drawing: what hangs where.
        says: the same in words.
    """
    svg = f'<svg class="plums" {_box(drawing)} role="img" aria-label="{escape(says)}">{_hangs(drawing)}</svg>'
    return Markup(svg)  # noqa: S704  # made of numbers, and of a text that is escaped


def plums_file(drawing: Drawing, numbers: Sequence[str] = ()) -> str:
    """The drawing as a file of its own, which sees no style of a page.

    Args:
        drawing: what hangs where.
        numbers: the gaps, to stand beside their plums; none on a cover.
    """
    width, height = drawing.frame.width, drawing.frame.height
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" {_box(drawing)} width="{width}" height="{height}">'
        f'<style>{_STYLE}</style><path class="wash" d="M0 0H{width}V{height}H0z"/>'
        f"{_hangs(drawing)}{_numbers(drawing, numbers)}</svg>\n"
    )


def icon_file() -> str:
    """The plum alone, for a browser's tab."""
    colours = [f"path{{fill:{one.plum}}}" for one in (LIGHT, DARK)]
    style = f"{colours[0]}@media(prefers-color-scheme:dark){{{colours[1]}}}"
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="-18 -6 36 36"><style>{style}</style><path d="{PLUM}"/></svg>\n'


def _box(drawing: Drawing) -> str:
    return f'viewBox="0 0 {drawing.frame.width} {drawing.frame.height}"'


def _hangs(drawing: Drawing) -> str:
    """A plum and each kind of leaf drawn once, and shown by its name wherever one hangs."""
    threads = "".join(drawing.thread(place).path for place in drawing.places)
    knots = "".join(drawing.knot(place).path for place in drawing.places)
    sides = [None, *sorted({place.side for place in drawing.places if place.side is not None})]
    kinds = "".join(_kind(side, drawing.size) for side in sides)
    shown = "".join(
        f'<use href="#{_name(place.side)}" x="{length(place.x)}" y="{length(drawing.frame.line + place.drop)}"/>'
        for place in drawing.places
    )
    return (
        f'<defs>{kinds}</defs><path class="thread" d="{drawing.line.path}{threads}"/>'
        f'<path class="plum" d="{knots}"/>{shown}'
    )


def _name(side: int | None) -> str:
    return "gap-plum" if side is None else f"gap-{SIDES[side]}"


def _kind(side: int | None, size: float) -> str:
    """A plum, or that plum with its leaf."""
    parts, below = (
        (plum(size), "") if side is None else (leaf(side, size), '<use href="#gap-plum"/>')
    )
    paths = "".join(
        f'<path class="{part.colour}" d="{"".join(shape.path for shape in part.shapes)}"/>'
        for part in parts
    )
    return f'<g id="{_name(side)}">{below}{paths}</g>'


def _numbers(drawing: Drawing, numbers: Sequence[str]) -> str:
    """Each number below its plum."""
    below = 2 * HIGH * drawing.size + 15
    return "".join(
        f'<text x="{length(place.x)}" y="{length(drawing.frame.line + place.drop + below)}">{escape(text)}</text>'
        for place, text in zip(drawing.places, numbers, strict=False)
    )


def colours_of(colours: Colours) -> dict[str, str]:
    """The color of each part, and of the ground they are seen on."""
    return {
        "wash": colours.plum_wash,
        "thread": colours.thread,
        "plum": colours.plum,
        "first": colours.slate,
        "second": colours.apricot,
    }


def _style(colours: Colours) -> str:
    parts = "".join(f".{name}{{fill:{colour}}}" for name, colour in colours_of(colours).items())
    return f"{parts}text{{fill:{colours.ink}}}"


_STYLE = (
    "text{font:bold 15px ui-rounded,sans-serif;text-anchor:middle}"
    f"{_style(LIGHT)}@media(prefers-color-scheme:dark){{{_style(DARK)}}}"
    "@media(forced-colors:active){path,text{fill:CanvasText}.wash{fill:Canvas}}"
)
"""A picture sees no style of its page."""
