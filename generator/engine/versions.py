"""The versions of every library that the program runs on."""

from __future__ import annotations

import re
from functools import cache
from importlib.metadata import PackageNotFoundError, requires, version

_OURS = "plumline"
_NAME = re.compile(r"[A-Za-z0-9._-]+")


@cache  # no library changes under a running program
def versions() -> str:
    """``babel 2.18.0``, one in a line: what we name as needed, what that needs, and so on."""
    found: dict[str, str] = {}
    _gather(_OURS, found)
    return "\n".join(f"{name} {number}" for name, number in sorted(found.items()))


def _gather(name: str, found: dict[str, str]) -> None:
    """Add a library and all that it needs; what is only needed elsewhere is not installed here."""
    if name in found:
        return
    try:
        found[name] = version(name)
    except PackageNotFoundError:
        return
    for line in requires(name) or ():
        needed, _, marker = line.partition(";")
        if "extra" not in marker and (named := _NAME.match(needed)):
            _gather(named[0].lower(), found)
