"""Which files of a written site a lesson is made of."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from posixpath import dirname, join, normpath

_NAMED = re.compile(r'\b(?:src|href|data-[a-z]+)="([^"#?:]+)')
_SHARED = "assets"
_LATER = ("later.css",)
"""Files that scripts bring and no page names."""
_MADE_HERE = {".zip"}
_LISTS = {"keep.json"}


def lesson_files(site: Path, folder: str) -> tuple[str, ...]:
    """Everything the lesson's pages show or lead to, in order, from the site's root.

    Args:
        site: folder of the finished site.
        folder: of the lesson on the site: ``es/river-walk``.
    """
    own = {
        file.relative_to(site).as_posix() for file in (site / folder).iterdir() if file.is_file()
    }
    pages = [path for path in own if path.endswith(".html")]
    shared = {path for page in pages for path in _named(site, page)}
    later = {f"{_SHARED}/{name}" for name in _LATER if (site / _SHARED / name).is_file()}
    return tuple(sorted(path for path in own | shared | later if _is_part(path)))


def named_files(site: Path, page: str) -> tuple[str, ...]:
    """A page and what it needs to be shown, from the site's root; no other page."""
    return (page, *sorted(set(_named(site, page))))


def _named(site: Path, page: str) -> Iterator[str]:
    text = (site / page).read_text("utf-8")
    for name in dict.fromkeys(_NAMED.findall(text)):
        path = normpath(join(dirname(page), name))
        if not path.startswith("..") and not path.endswith(".html") and (site / path).is_file():
            yield path


def _is_part(path: str) -> bool:
    name = path.rpartition("/")[2]
    return not path.endswith(tuple(_MADE_HERE)) and name not in _LISTS and name != "sw.js"
