"""The libraries that are installed, told by looking at their folders: loads nothing, takes no time."""

from __future__ import annotations

import os
import sys


def installed() -> list[str]:
    """``babel-2.18.0.dist-info``: the name of what each installation leaves holds its version.

    PyPA specifications, recorded installed projects.
    """
    found = {
        name
        for folder in sys.path
        if folder.endswith("-packages") and os.path.isdir(folder)
        for name in os.listdir(folder)
        if name.endswith(".dist-info")
    }
    return sorted(found)
