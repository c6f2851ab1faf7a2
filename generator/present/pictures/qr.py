"""A QR code of an address: as SVG for paper, and in half blocks for a terminal."""

from __future__ import annotations

from functools import lru_cache
from io import StringIO

import segno
from markupsafe import Markup

_MASK = 2
"""Every mask is as readable; trying all eight for the most even picture takes five times as long."""


@lru_cache(maxsize=256)  # three pages of a lesson print the same code
def qr_code(address: str) -> Markup:
    """SVG of a QR code (ISO/IEC 18004), medium error correction; empty for no address."""
    if not address:
        return Markup("")
    code = segno.make(address, error="m", micro=False, mask=_MASK)
    svg = code.svg_inline(border=2, omitsize=True, svgclass="qr", lineclass="qr-dark")
    return Markup(svg)  # noqa: S704  # made by segno from module positions; the address is not in it


def qr_in_blocks(address: str) -> str:
    """Lines of a QR code, its light squares drawn: to be shown white on black."""
    drawn = StringIO()
    segno.make(address, error="m", micro=False).terminal(out=drawn, compact=True, border=2)
    return drawn.getvalue().rstrip("\n")
