"""Data inside a script block of a page."""

from __future__ import annotations

import json

from markupsafe import Markup


def script_data(data: object) -> Markup:
    """JSON in which ``<`` is written as an escape, so that no text can end the script block."""
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"), sort_keys=True)
    return Markup(text.replace("<", "\\u003c"))  # noqa: S704  # escaped for a script block just here
