"""A file in which two versions stand side by side, as git leaves it after a merge that nobody finished."""

from __future__ import annotations

import re

from generator.problems import Place, Problem

_BEGINS = re.compile(r"^<{7}(?: .*)?$", re.MULTILINE)
_ENDS = re.compile(r"^>{7}(?: .*)?$", re.MULTILINE)


def merge_problem(path: str, text: str) -> Problem | None:
    """The first place where two versions stand side by side (git-merge, "How conflicts are presented").

    Args:
        path: of the file, for the place.
        text: of the file.
    """
    begun = _BEGINS.search(text)
    ended = _ENDS.search(text, begun.end()) if begun else None
    if not begun or not ended:
        return None
    first, last = (text.count("\n", 0, found.start()) + 1 for found in (begun, ended))
    what = f"two versions of this file stand side by side, from here to line {last}, as a merge left them"
    hint = "keep the lines that are right, and take out those that begin with <<<<<<<, ======= and >>>>>>>"
    return Problem(Place(path, first), what, hint)
