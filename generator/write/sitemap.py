"""The list of pages for search engines, by the protocol of sitemaps.org, version 0.9."""

from __future__ import annotations

import gzip
from collections.abc import Iterable, Iterator, Sequence
from html import escape

from generator.present.output import Output

_MOST = 50_000
"""Addresses in one list, says the protocol; more pages have several lists, and a list of these."""
_HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n'
_SPACE = 'xmlns="http://www.sitemaps.org/schemas/sitemap/0.9"'


def sitemap(address: str, pages: Sequence[str], day: str, most: int = _MOST) -> Iterator[Output]:
    """The list as a file, plain and packed; the same bytes for the same pages.

    Args:
        address: of the published site, ending in a slash; the protocol knows whole addresses only.
        pages: their paths from the site's root, in order.
        day: when the site last changed, ``2026-11-25``; nothing where that is not known.
        most: addresses in one list.
    """
    if len(pages) <= most:
        yield from _file("sitemap", "urlset", "url", [address + page for page in pages], day)
        return
    parts = [pages[start : start + most] for start in range(0, len(pages), most)]
    names = [f"sitemap-{number}" for number in range(1, len(parts) + 1)]
    for name, part in zip(names, parts, strict=True):
        yield from _file(name, "urlset", "url", [address + page for page in part], day)
    lists = [f"{address}{name}.xml" for name in names]
    yield from _file("sitemap", "sitemapindex", "sitemap", lists, day)


def _file(name: str, outer: str, inner: str, places: Iterable[str], day: str) -> Iterator[Output]:
    changed = f"<lastmod>{day}</lastmod>" if day else ""
    lines = (f"<{inner}><loc>{escape(place)}</loc>{changed}</{inner}>\n" for place in places)
    content = f"{_HEAD}<{outer} {_SPACE}>\n{''.join(lines)}</{outer}>\n".encode()
    yield Output(f"{name}.xml", content)
    yield Output(f"{name}.xml.gz", gzip.compress(content, mtime=0))
