"""Whether what lies in a place is a site of ours, which alone may be put into the place of another."""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path

MARK = ".plumline"
"""File in a published folder that names everything at its top that was put there, a name a line."""
KEPT = ("404.html", "_headers", "assets", "index.html", "sw.js")
"""Names at the top of every built site; a folder that was filled by hand is known by them."""


def foreign(names: Collection[str], listed: str) -> list[str]:
    """What at the top of a place is neither ours nor the host's own.

    Args:
        names: everything at its top.
        listed: what our file there says; nothing where it is not there.

    A name that begins with a dot is the host's own (``.well-known``, ``.htaccess``): it is carried over.
    """
    seen = {name for name in names if not name.startswith(".")}
    if listed:
        return sorted(seen - set(listed.splitlines()))
    return [] if not seen or set(KEPT) <= seen else sorted(seen)


def listing(site: Path) -> str:
    """What our file says of a built site."""
    return "".join(f"{file.name}\n" for file in sorted(site.iterdir()))
