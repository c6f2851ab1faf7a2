"""Measures of the files themselves: bytes of a first view, and what a strict parser says of the HTML."""

from __future__ import annotations

import gzip
import re
from collections.abc import Iterator
from importlib.util import find_spec
from pathlib import Path

import html5lib

PACKED = "brotli" if find_spec("brotli") else "gzip"
"""How sizes are packed: as most hosts do, where this machine can."""
_NEEDED = re.compile(r'<(?:link rel="stylesheet"|script defer)[^>]*?(?:href|src)="([^"]+)"')


def first_views(site: Path) -> Iterator[tuple[str, int]]:
    """Bytes of HTML, styles and scripts of each lesson page in each language."""
    for page in lesson_pages(site):
        html = page.read_bytes()
        head = html.decode().partition("</head>")[
            0
        ]  # what is linked further down holds up nothing above
        files = [page.parent / path for path in _NEEDED.findall(head)]
        size = packed(html) + sum(packed(file.read_bytes()) for file in files)
        yield page.parent.relative_to(site).as_posix(), size


def lesson_pages(site: Path) -> list[Path]:
    """The family's page of each lesson."""
    return [
        page
        for page in sorted(site.rglob("index.html"))
        if "<lesson-thread" in page.read_text("utf-8")
    ]


def parser_errors(site: Path, most: int | None = None) -> list[str]:
    """Parse errors of the HTML standard, section 13.2, in any page, or in the first so many."""
    found = []
    for page in sorted(site.rglob("*.html"))[:most]:
        parser = html5lib.HTMLParser()
        parser.parse(page.read_bytes(), transport_encoding="utf-8")
        name = page.relative_to(site).as_posix()
        found += [f"{name}:{line}: {code}" for (line, _), code, _ in parser.errors]
    return found


def packed(content: bytes) -> int:
    """Bytes after packing at the level servers use on the fly."""
    if PACKED == "gzip":
        return len(gzip.compress(content, 6, mtime=0))
    import brotli  # noqa: PLC0415  # not everywhere

    return len(brotli.compress(content, quality=5))
