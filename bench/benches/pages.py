"""What the pages are held to, over the built demo in a real Chromium."""

from __future__ import annotations

import sys
from collections.abc import Iterator

from bench.measuring import care, files, screens
from bench.measuring.browser import launched
from bench.measuring.demo import built_demo
from bench.measuring.row import Case, NothingMeasuredError, Row, row
from tests.local_server import serving


def rows(case: Case) -> Iterator[Row]:
    """Every measure, those that need no browser first."""
    site = built_demo()
    if not files.lesson_pages(site):
        raise NothingMeasuredError("the site has no lesson page")
    yield row("parser", _none_of(files.parser_errors(site, 3 if case.small else None)))
    yield row("care", _none_of(care.missing(site)))
    with serving(site) as address, launched() as browser:
        look = screens.Look(browser, address, site, 1 if case.small else None)
        yield row("shift", look.layout_shift())
        yield row("ready", look.milliseconds_to_ready(1 if case.small else 5))
        size, what = look.smallest_target()
        yield row("target", size, what)
        yield row("order", _none_of(look.out_of_order()))
        yield row("policy", _none_of(look.breaches()))
        for name, found in look.accessibility():
            yield row("axe", _none_of(found), name)


def _none_of(found: list[str]) -> int:
    """How many were found; each is told, away from the figures."""
    for each in found[:20]:
        print(f"    {each}", file=sys.stderr)
    return len(found)
