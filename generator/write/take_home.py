"""One file with a whole lesson in it, to carry home and open without a network."""

from __future__ import annotations

from collections.abc import Mapping

from generator.present.pages.take_home import Copy, copied_page
from generator.write.zip_file import Packed, deflated, deflated_once, stored, zip_file

_PACKED = (".mp4", ".webm", ".jpg", ".png", ".webp")
"""Kinds that are small already."""
_BY_NETWORK_ONLY = ("plotly-basic.min.js", "plotly-basic.LICENSE.txt", ".chart.json")
"""The chart to explore needs data that no browser fetches from a folder."""


def take_home(folder: str, files: Mapping[str, bytes], address: str) -> bytes:
    """The copy of a lesson; the same bytes wherever and whenever it is made.

    Args:
        folder: the one inside, called like the lesson.
        files: what the lesson's files hold, by path from the site's root.
        address: of the published site; empty where it has none.
    """
    carried = {path: files[path] for path in sorted(files) if not path.endswith(_BY_NETWORK_ONLY)}
    copy = Copy(
        names={path: _name(path) for path in carried},
        captions={path: held for path, held in carried.items() if path.endswith(".vtt")},
        address=address,
    )
    return zip_file(
        (f"{folder}/{copy.names[path]}", _packed(path, held, copy))
        for path, held in carried.items()
    )


def _name(path: str) -> str:
    """Where a file lies in the copy: what all lessons share in ``assets``, all else beside the page."""
    return path if path.startswith("assets/") else path.rpartition("/")[2]


def _packed(path: str, held: bytes, copy: Copy) -> Packed:
    if path.endswith(".html"):
        return deflated(copied_page(held.decode(), path, copy).encode())
    if path.endswith(_PACKED):
        return stored(held)
    return deflated_once(held) if path.startswith("assets/") else deflated(held)
