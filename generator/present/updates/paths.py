"""Where updates stand in the folder of a language."""

from __future__ import annotations

UPDATES = "updates.html"
"""The page with the newest publications."""
FEED = "updates.xml"
"""Its feed."""


def older_path(number: int) -> str:
    """A page with older publications, numbered from the oldest, from 1."""
    return f"updates-{number}.html"
