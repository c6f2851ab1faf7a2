"""Where updates stand in the folder of a language."""

from __future__ import annotations

import re

UPDATES = "updates.html"
"""The page with the newest publications."""
FEED = "updates.xml"
"""Its feed."""


_OLDER = re.compile(r"(.*/)?updates-\d+\.html")


def is_older(path: str) -> bool:
    """Whether a path from the site's root is that of a page with older publications."""
    return _OLDER.fullmatch(path) is not None


def older_path(number: int) -> str:
    """A page with older publications, numbered from the oldest, from 1."""
    return f"updates-{number}.html"
