"""A view as the data its paper is set from: no text in it is ever read as a program of typst.

A text is a string, or a list of runs where some of its words are marked. A picture is its SVG with
what it shows in words. Everything else is as in the view, by the names of its fields.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import fields, is_dataclass
from html import unescape
from typing import TypeAlias

from markupsafe import Markup

from generator.present.papers.runs import runs_of
from generator.present.views.page import PageView
from generator.present.words.foreign import Marked

Data: TypeAlias = str | int | float | bool | Sequence["Data"] | Mapping[str, "Data"] | None

_SAYS = re.compile(r'^<svg\b[^>]*?\baria-label="([^"]*)"')
_WIDTH = re.compile(r'^<svg\b[^>]*?\bviewBox="\S+ \S+ (\S+) \S+"')
_BARE = re.compile(r"\s(data-[\w-]+)(?=[\s/>])")
"""An attribute without a value, which HTML knows and SVG by itself does not."""
_SVG = "<svg"
_NAMED = '<svg xmlns="http://www.w3.org/2000/svg"'


def as_data(value: object) -> Data:
    """What a template sees of a value of a view.

    Raises:
        TypeError: a paper can show nothing of its kind; a bug of ours.
    """
    if isinstance(value, Markup):
        return _picture(value) if value.startswith(_SVG) else _text(value)
    if isinstance(value, Marked):
        return _text(value.__html__())
    if isinstance(value, str):
        return str(value)
    if value is None or isinstance(value, bool | int | float):
        return value
    if isinstance(value, PageView):
        return None  # what stands around a page stands around no paper
    if isinstance(value, Mapping):
        return {str(key): as_data(one) for key, one in value.items()}
    if isinstance(value, tuple | list | range):
        return [as_data(one) for one in value]
    if is_dataclass(value):
        return {one.name: as_data(getattr(value, one.name)) for one in fields(value)}
    what = f"a paper cannot show a {type(value).__name__}"
    raise TypeError(what)


def _text(html: Markup) -> Data:
    runs = runs_of(html)
    if all(isinstance(run, str) for run in runs):
        return "".join(str(run) for run in runs)
    return {"runs": runs}


def _picture(svg: Markup) -> Data:
    """A picture by itself, its width in the pixels it has on a page."""
    says, width = _SAYS.match(svg), _WIDTH.match(svg)
    alone = svg if "xmlns=" in svg.partition(">")[0] else str(svg).replace(_SVG, _NAMED, 1)
    return {
        "svg": _BARE.sub(r' \1=""', str(alone)),
        "alt": unescape(says[1]) if says else "",
        "width": float(width[1]) if width else 0,
    }
