"""Two names of a folder change places in one step, where the machine knows how."""

from __future__ import annotations

import ctypes
import os
import sys
from pathlib import Path

_HERE = -100
"""``AT_FDCWD`` of Linux: paths are read from where the program stands."""
_EXCHANGE = 2
"""``RENAME_EXCHANGE`` of Linux, renameat2(2)."""
_SWAP = 2
"""``RENAME_SWAP`` of macOS, renamex_np(2); from memory."""


def exchange(one: Path, other: Path) -> bool:
    """Let two folders change names in one step; says whether that was done.

    Nobody who looks finds either name without a folder. Not every system and file system can do
    it: then nothing was done.
    """
    names, system = (os.fsencode(one), os.fsencode(other)), str(sys.platform)
    try:
        library = ctypes.CDLL(None)
        if system == "linux":
            return not library.renameat2(_HERE, names[0], _HERE, names[1], _EXCHANGE)
        if system == "darwin":
            return not library.renamex_np(*names, _SWAP)
    except (AttributeError, OSError, TypeError):  # an older or another C library has no such call
        return False
    return False
