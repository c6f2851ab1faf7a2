"""How late the pacer's numbers come on a busy page."""

from __future__ import annotations

from collections.abc import Iterator

from bench.measuring.browser import launched
from bench.measuring.demo import built_demo
from bench.measuring.row import Case, Row, row
from tests.browser.opened_pacer import LESSON, begin
from tests.browser.pacer_watch import latest
from tests.local_server import serving

SECONDS = 120


def rows(case: Case) -> Iterator[Row]:
    """Two minutes of counting while the page is busy."""
    with serving(built_demo()) as address, launched() as browser:
        page = browser.new_page()
        page.goto(f"{address}{LESSON}/index.html")
        yield row("pacer", latest(page, begin(page, count=500), 3 if case.small else SECONDS))
