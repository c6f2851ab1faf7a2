"""Styles, scripts and pictures that the pages of all languages and lessons share."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from generator.present.assets.bundle import join_script, join_styles, sources
from generator.present.assets.kind_files import (
    style_entries,
    with_paper_styles,
)
from generator.present.assets.licences import licences_file
from generator.present.output import Output
from generator.present.pictures.plums.svg import icon_file

_STYLES = ("screen", "below", "reading", "paper", "embed")
_SCRIPTS = ("paper", "formerly", "former-file")
"""Entries of theme/css/ and theme/js/, each joined into one file with all it imports; the kinds of stop name more."""


def shared_files(folder: Path, *, recording: bool, preview: bool = False) -> Iterator[Output]:
    """Styles, scripts and pictures that the pages of all languages share.

    Args:
        folder: the theme's.
        recording: whether there are pages for filming, which have a style and a script of their own.
        preview: whether there is the page of components, which has a style of its own.
    """
    styles, scripts = with_paper_styles(sources(folder, "css")), sources(folder, "js")
    own = ("recording",) if recording else ()
    shown = ("components",) if preview else ()
    entries = {name: f"css/{name}.css" for name in (*_STYLES, *own, *shown)} | style_entries(styles)
    for name, entry in entries.items():
        yield Output(f"assets/{name}.css", join_styles(entry, styles).encode())
    for name in (*_SCRIPTS, *own):
        yield Output(f"assets/{name}.js", join_script(f"js/{name}.js", scripts).encode())
    yield licences_file(folder)
    vendor = folder / "vendor" / "plotly"
    yield Output("assets/plotly-bars.min.js", (vendor / "plotly-bars.min.js").read_bytes())
    yield Output("assets/plotly-bars.LICENSE.txt", (vendor / "LICENSE").read_bytes())
    drawing = folder / "vendor" / "lean-qr"
    yield Output("assets/lean-qr.min.js", (drawing / "lean-qr.min.js").read_bytes())
    yield Output("assets/lean-qr.LICENSE.txt", (drawing / "LICENSE").read_bytes())
    yield Output("assets/favicon.svg", icon_file().encode())
