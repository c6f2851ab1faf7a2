"""Which files of a site a lesson is made of."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from posixpath import dirname, join, normpath

_NAMED = re.compile(r'\b(?:src|href|poster|data-[a-z]+)="([^"#?:]+)')
_LATER = ("assets/later.css",)
"""Files that scripts bring and no page names."""

Known = Callable[[str], bool]


def needs_of(page: str, path: str, is_known: Known) -> tuple[str, ...]:
    """What a page needs to be shown, from the site's root; no other page."""
    return tuple(sorted({*_named(page, path, is_known), *filter(is_known, _LATER)}))


def _named(page: str, path: str, is_known: Known) -> Iterator[str]:
    for name in dict.fromkeys(_NAMED.findall(page)):
        target = normpath(join(dirname(path), name))
        is_made_of = target.endswith((".html", ".zip", "keep.json", "sw.js"))
        if not target.startswith("..") and not is_made_of and is_known(target):
            yield target
